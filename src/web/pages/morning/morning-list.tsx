import type { trace } from '../../../contract/index.ts';
import { morningWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { MorningLine } from './morning-line.tsx';

interface Props {
  readonly title: string;
  readonly lines: readonly trace.MorningLine[];
  readonly empty: string;
  /** Whether its first thing to do carries the green: what is bought does not hold the morning up. */
  readonly hasGreen?: boolean;
}

export function MorningList({ title, lines, empty, hasGreen = false }: Props) {
  const firstToAct = lines.find(({ action }) => action !== null)?.key;
  return (
    <Card title={title} aside={lines.length > 0 && morningWords.count(lines.length)} isFlush>
      <List rows={lines} keyOf={({ key }) => key} empty={empty}>
        {(line) => <MorningLine line={line} isFirst={hasGreen && line.key === firstToAct} />}
      </List>
    </Card>
  );
}
