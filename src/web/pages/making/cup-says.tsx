import { type CupVerdict, fillByCup } from '../../../core/filling/index.ts';
import { exact, toText } from '../../../core/quantity/index.ts';
import { makingWords, sayGrams, sayNumber } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import type { Step } from './batch.ts';

interface Props {
  readonly cup: CupVerdict;
  readonly tins: Step['tins'];
}

/** What a full cup tells: how dense, how much air, and what goes into each tin to its brim. */
export const CupSays = ({ cup, tins }: Props) => (
  <div aria-live="polite">
    <p>
      {makingWords.cupNet(sayGrams(toText(cup.netGrams)), sayNumber(cup.densityGramsPerMl.toNumber(), 3))}
    </p>
    {cup.overrunPercent && <p>{makingWords.cupAir(sayNumber(cup.overrunPercent.toNumber(), 0))}</p>}
    {tins.map((tin) => (
      <TinTakes key={tin.productName} cup={cup} tin={tin} />
    ))}
  </div>
);

const TinTakes = ({ cup, tin }: { readonly cup: CupVerdict; readonly tin: Step['tins'][number] }) => {
  const fill = fillByCup(tin.brimMl, cup);
  if (!fill.ok) return null;
  const takes = toText(exact(fill.value).toDecimalPlaces(1, 3));
  const isRoom = fill.value.gte(tin.declaredGrams);
  return (
    <p>
      <State kind={isRoom ? 'ready' : 'stop'}>
        {makingWords.cupTin(tin.productName, sayGrams(takes), sayGrams(tin.declaredGrams), isRoom)}
      </State>
    </p>
  );
};
