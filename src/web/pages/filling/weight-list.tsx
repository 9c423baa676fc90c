import { fillingWords, sayGrams } from '../../../words/index.ts';
import { useWrite } from '../../api/use-write.ts';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import { type Column, Table } from '../../parts/table.tsx';
import { AskReason } from '../making/ask-reason.tsx';
import type { Run } from './run.ts';
import { sayFill } from './say-fill.ts';
import { TakeOut } from './take-out.tsx';

type Weight = Run['weights'][number];
const KINDS = { inside: 'ready', 'too-light': 'stop', heavy: 'watch' } as const;

export const WeightList = ({ run }: { readonly run: Run }) => (
  <Card title={fillingWords.weights} anchor="weights" isFlush={run.weights.length > 0}>
    {run.weights.length === 0 ? (
      <p className="soft">{fillingWords.noWeights}</p>
    ) : (
      <Table
        caption={fillingWords.weights}
        isCaptionHidden
        rows={[...run.weights].reverse()}
        keyOf={(weight) => weight.entryId}
        columns={[
          { head: fillingWords.tin, cell: (weight) => weight.number },
          {
            head: fillingWords.net,
            cell: (weight) => <strong>{sayGrams(weight.netGrams)}</strong>,
            isNumber: true,
          },
          { head: fillingWords.verdict, cell: (weight) => <Verdict weight={weight} /> },
          ...(run.state === 'filling' ? [strikeColumn(run)] : []),
        ]}
      />
    )}
  </Card>
);

const strikeColumn = (run: Run): Column<Weight> => ({
  head: fillingWords.strike,
  cell: (weight) => {
    if (weight.isStruck) return '';
    return weight.verdict === 'too-light' ? (
      <TakeOut run={run} weight={weight} />
    ) : (
      <StrikeFill run={run} weight={weight} />
    );
  },
});

const Verdict = ({ weight }: { readonly weight: Weight }) =>
  weight.isStruck ? (
    <State kind="plain">{fillingWords.struck}</State>
  ) : (
    <>
      <State kind={KINDS[weight.verdict]}>{sayFill(weight)}</State>{' '}
      <span className="soft small">{fillingWords.surely(`${weight.surelyGrams} g`)}</span>
    </>
  );

function StrikeFill({ run, weight }: { readonly run: Run; readonly weight: Weight }) {
  const strike = useWrite('strikeFill');
  return (
    <AskReason
      word={fillingWords.strike}
      label={fillingWords.strikeOf(weight.number)}
      title={fillingWords.strikeTitle(weight.number)}
      reasonLabel={fillingWords.strikeWhy}
      isBusy={strike.isBusy}
      problems={strike.problems}
      onReason={async (reason) =>
        (await strike.write({ params: { id: run.id }, body: { entryId: weight.entryId, reason } })) !==
        undefined
      }
    />
  );
}
