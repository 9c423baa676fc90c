import { briefGrams, fillingWords, lightWords, sayGrams, wayWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import { type Column, Table } from '../../parts/table.tsx';
import { PutAside } from './put-aside.tsx';
import { isTin, type Run, type Weight } from './run.ts';
import { sayFill } from './say-fill.ts';

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
          ...(areSeveral(run) ? [{ head: fillingWords.weighed, cell: sayWay }] : []),
          ...(run.state === 'filling' ? [strikeColumn(run)] : []),
        ]}
      />
    )}
  </Card>
);

const areSeveral = ({ weights, way }: Run): boolean => weights.some((weight) => weight.way !== way);
const sayWay = ({ way }: Weight): string => wayWords.short[way];

const strikeColumn = (run: Run): Column<Weight> => ({
  head: fillingWords.takeOut,
  cell: (weight) => (isTin(weight) ? <PutAside run={run} weight={weight} /> : ''),
});

function Verdict({ weight }: { readonly weight: Weight }) {
  if (weight.isStruck)
    return (
      <State kind="plain">
        {weight.fate === null
          ? fillingWords.struck
          : `${fillingWords.struck}, ${lightWords.fateWas[weight.fate]}`}
      </State>
    );
  if (weight.isRefilled)
    return (
      <State kind="plain">
        {sayFill(weight)}; {lightWords.filledUp}
      </State>
    );
  return (
    <>
      <State kind={KINDS[weight.verdict]}>{sayFill(weight)}</State>{' '}
      <span className="soft small">
        {fillingWords.surely(sayGrams(briefGrams(weight.surelyGrams)))}
        {weight.sure.length > 0 && `, ${lightWords.wasAsked}`}
      </span>
    </>
  );
}
