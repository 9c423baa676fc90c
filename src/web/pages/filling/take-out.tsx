import { fillingWords } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import type { Run } from './run.ts';

interface Props {
  readonly run: Run;
  readonly weight: Run['weights'][number];
  readonly isBench?: boolean;
}

/** A tin that is too light is put aside in one press: its weight stays readable and counts no more. */
export function TakeOut({ run, weight, isBench = false }: Props) {
  const strike = useWrite('strikeFill');
  const body = { entryId: weight.entryId, reason: fillingWords.takenOut };
  return (
    <>
      <Button
        isBench={isBench}
        isBusy={strike.isBusy}
        label={fillingWords.takeOutOf(weight.number)}
        onPress={() => void strike.write({ params: { id: run.id }, body })}
      >
        {fillingWords.takeOut}
      </Button>
      <Problems problems={strike.problems} />
    </>
  );
}
