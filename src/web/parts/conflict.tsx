import type { Problem } from '../../core/problem.ts';
import { partWords } from '../../words/index.ts';
import type { Editing } from '../api/use-editing.ts';
import { type Described, findDifferences } from '../show/find-differences.ts';
import { Button } from './button.tsx';
import { Card } from './card.tsx';
import { FormActions } from './form-actions.tsx';
import { Table } from './table.tsx';

interface Props<Draft> {
  readonly problems: readonly Problem[];
  readonly editing: Editing<Draft>;
  readonly describe: (draft: Draft) => Described;
  readonly onChosen: () => void;
}

const { conflict: words } = partWords;
const shown = (text: string): string => (text === '' ? partWords.nothing : text);

/** Two people changed the same thing: both sides are shown, and the person chooses. */
export function Conflict<Draft>({ problems, editing, describe, onChosen }: Props<Draft>) {
  if (!problems.some(({ code }) => code === 'changed-meanwhile')) return null;
  const rows = findDifferences(describe(editing.draft), describe(editing.theirs));
  const choose = (choice: () => void) => () => {
    choice();
    onChosen();
  };
  return (
    <Card title={words.title}>
      <p>{rows.length === 0 ? words.none : words.says}</p>
      {rows.length > 0 && (
        <Table
          caption={words.title}
          isCaptionHidden
          rows={rows}
          keyOf={({ label }) => label}
          columns={[
            { head: words.field, cell: ({ label }) => label },
            { head: words.mine, cell: ({ mine }) => shown(mine) },
            { head: words.theirs, cell: ({ theirs }) => shown(theirs) },
          ]}
        />
      )}
      <FormActions>
        <Button onPress={choose(editing.takeTheirs)}>{words.takeTheirs}</Button>
        <Button isStop onPress={choose(editing.keepMine)}>
          {words.keepMine}
        </Button>
      </FormActions>
    </Card>
  );
}
