import { sayGrams, scaleWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Loaded } from '../../parts/loaded.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { ChecksCard } from './checks-card.tsx';
import type { Scale, ScaleRecord } from './scale.ts';
import { ScaleCheckCard } from './scale-check-card.tsx';
import { ScaleState } from './scale-state.tsx';
import styles from './scales.module.css';
import { TestCard } from './test-card.tsx';

/** One scale: whether it may weigh today, how well it repeats, how its checks went. */
export function ScalePage() {
  const id = useParam('id');
  const workshop = useRead('getWorkshop');
  const read = useRead('getScaleRecord', { params: { id } });
  return (
    <Loaded read={read} title={scaleWords.above}>
      {(record) => (
        <Loaded read={workshop} title={scaleWords.above}>
          {({ scales }) => {
            const scale = scales.find((each) => each.id === id);
            return scale ? <ScaleView scale={scale} record={record} /> : null;
          }}
        </Loaded>
      )}
    </Loaded>
  );
}

const ScaleView = ({ scale, record }: { readonly scale: Scale; readonly record: ScaleRecord }) => (
  <Page
    title={scale.name}
    above={<TextLink to="/workshop#scales">{scaleWords.back}</TextLink>}
    says={scale.name}
    soft={scaleWords.says(sayGrams(scale.capacityGrams), sayGrams(scale.readabilityGrams))}
    actions={<ScaleState scale={scale} />}
  >
    <div className={styles.boards}>
      <div className={`${styles.column} ${styles.noPaper}`}>
        <ScaleCheckCard scaleId={scale.id} />
      </div>
      <div className={styles.column}>
        <ChecksCard scale={scale} checks={record.checks} />
        <TestCard scale={scale} tests={record.tests} />
      </div>
    </div>
  </Page>
);
