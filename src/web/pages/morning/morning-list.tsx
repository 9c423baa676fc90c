import type { ReactNode } from 'react';
import type { trace } from '../../../contract/index.ts';
import { morningWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { MorningLine } from './morning-line.tsx';

interface Props<Line> {
  readonly title: string;
  readonly lines: readonly Line[];
  readonly empty: string;
  /** What follows # in an address that leads to it. */
  readonly anchor?: string;
  /** Whether its first thing to do carries the green: what is bought does not hold the morning up. */
  readonly hasGreen?: boolean;
  readonly beside?: (line: Line) => ReactNode;
}

export function MorningList<Line extends trace.MorningLine>({
  title,
  lines,
  empty,
  anchor,
  hasGreen = false,
  beside,
}: Props<Line>) {
  const firstToAct = lines.find(({ action }) => action !== null)?.key;
  return (
    <Card
      title={title}
      {...(anchor !== undefined && { anchor })}
      aside={lines.length > 0 && morningWords.count(lines.length)}
      isFlush
    >
      <List rows={lines} keyOf={({ key }) => key} empty={empty}>
        {(line) => (
          <MorningLine line={line} isFirst={hasGreen && line.key === firstToAct} beside={beside?.(line)} />
        )}
      </List>
    </Card>
  );
}
