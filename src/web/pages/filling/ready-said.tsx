import { cleaningWords, readyWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import type { ReadyKind } from './ready-card.tsx';
import styles from './run.module.css';
import type { Run } from './run.ts';

interface Props {
  readonly run: Run;
  /** Absent: the run is closed. */
  readonly onAgain?: (kind: ReadyKind) => void;
}

const KINDS: readonly ReadyKind[] = ['area', 'containers', 'issued'];
const TITLES = {
  area: readyWords.areaTitle,
  containers: readyWords.containersTitle,
  issued: readyWords.issuedTitle,
};

/** What was said before the first tin, each with who said it. */
export const ReadySaid = ({ run, onAgain }: Props) => (
  <Card title={readyWords.title}>
    <ul className={styles.said}>
      {KINDS.map((kind) => (
        <li key={kind}>
          <Said run={run} kind={kind} />
          {onAgain && (
            <Button isBench label={`${readyWords.again}: ${TITLES[kind]}`} onPress={() => onAgain(kind)}>
              {run.ready[kind] === null ? readyWords.sayNow : readyWords.again}
            </Button>
          )}
        </li>
      ))}
    </ul>
  </Card>
);

function Said({ run: { ready }, kind }: { readonly run: Run; readonly kind: ReadyKind }) {
  const { area, containers, issued } = ready;
  if (kind === 'area' && area)
    return (
      <span>
        <State kind={area.isClear ? 'ready' : 'watch'}>{readyWords.saidArea(area.isClear, area.by)}</State>{' '}
        {area.reason}
      </span>
    );
  if (kind === 'containers' && containers) {
    const how = [cleaningWords[containers.method], containers.remark].filter((each) => each !== '');
    return <State kind="ready">{readyWords.saidContainers(how.join(', '), containers.by)}</State>;
  }
  if (kind === 'issued' && issued) {
    const { parts } = readyWords;
    const counted = [
      parts.tin(issued.tins),
      ...(issued.lids === null ? [] : [parts.lid(issued.lids)]),
      ...(issued.labels === null ? [] : [parts.label(issued.labels)]),
    ];
    return <State kind="ready">{readyWords.saidIssued(counted.join(', '), issued.by)}</State>;
  }
  return (
    <State kind="plain">
      {TITLES[kind]} {readyWords.notYet}
    </State>
  );
}
