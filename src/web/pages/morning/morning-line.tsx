import type { ReactNode } from 'react';
import type { trace } from '../../../contract/index.ts';
import { Level } from '../../parts/level.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';

interface Props {
  readonly line: trace.MorningLine;
  /** The first thing to do of its list carries the green. */
  readonly isFirst: boolean;
  /** What else can be done, before the tap that the line leads to. */
  readonly beside?: ReactNode;
}

export function MorningLine({ line, isFirst, beside }: Props) {
  const [first, ...rest] = line.detail;
  return (
    <>
      <ListRow>
        <strong>{line.title}</strong>
        <State kind={line.state}>
          <Sentence saying={line.stateWord} />
        </State>
      </ListRow>
      {line.level && <Level {...line.level} />}
      {first && (
        <p>
          <Sentence saying={first} />
        </p>
      )}
      {rest.map((saying) => (
        <p key={`${saying.code} ${JSON.stringify(saying.parameters)}`} className="soft">
          <Sentence saying={saying} />
        </p>
      ))}
      {line.action && (
        <ListFoot>
          {beside ?? <span />}
          <LinkButton to={line.action.to} isAct={isFirst}>
            <Sentence saying={line.action.words} />
            <span className="visually-hidden">: {line.title}</span>
          </LinkButton>
        </ListFoot>
      )}
    </>
  );
}
