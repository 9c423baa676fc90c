import { checkWords, memoryWords as words } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State, type StateKind } from '../../parts/state.tsx';
import type { Check } from './check.ts';

type Line = Check['memory']['firm'][number];

/** What of the answer holds even if memory errs, what hangs on it and which paper would answer, what nobody knows. */
export const MemoryCard = ({ check: { memory } }: { readonly check: Check }) => (
  <Card title={words.title}>
    <p>{words.says(memory.firm.length, memory.hangs.length, memory.unknown.length)}</p>
    <Group title={words.hangs} lines={memory.hangs} kind="watch" />
    <Group title={words.unknown} lines={memory.unknown} kind="watch" />
    <Group title={words.firm} lines={memory.firm} kind="ready" />
    <p className="soft small">{words.defined}</p>
  </Card>
);

interface Props {
  readonly title: string;
  readonly lines: readonly Line[];
  readonly kind: StateKind;
}

const Group = ({ title, lines, kind }: Props) =>
  lines.length > 0 && (
    <Disclosure title={words.group(title, lines.length)}>
      {() => (
        <ul>
          {lines.map((line) => (
            <li key={JSON.stringify(line)}>
              <State kind={kind}>
                <Sentence saying={line.says} />
              </State>{' '}
              <span className="soft">
                {line.markets.map((market) => checkWords.market[market]).join(', ')}
              </span>
              {line.ask && (
                <>
                  {' '}
                  <Sentence saying={line.ask} />
                </>
              )}
            </li>
          ))}
        </ul>
      )}
    </Disclosure>
  );
