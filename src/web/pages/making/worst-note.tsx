import { exact, readDecimal } from '../../../core/quantity/index.ts';
import { weighInWords as words } from '../../../words/index.ts';
import { Disclosure } from '../../parts/disclosure.tsx';
import { State } from '../../parts/state.tsx';
import type { Addition } from './batch.ts';
import { worstOfLimit } from './worst-of-limit.ts';

/** Where a limit is near: how far from it this stays if the scale is out by its most, with its working. */
export function WorstNote({ screen, net }: { readonly screen: Addition; readonly net: string }) {
  const { limit } = screen;
  const typed = readDecimal(net, 'grams');
  const grams = typed.ok && typed.value.gt(0) ? exact(screen.inGrams).plus(typed.value) : null;
  const ratio = limit && worstOfLimit(grams ?? screen.targetGrams, limit);
  if (limit === null || ratio === null || ratio.lt(NEAR)) return null;
  const told = ratio.toDecimalPlaces(2, 0).toFixed(2);
  const isOver = ratio.gt(1);
  const figures = words.worstFigures(
    (grams ?? exact(screen.targetGrams)).toFixed(),
    limit.errorGrams,
    exact(screen.exactGrams).toDecimalPlaces(3).toFixed(),
    exact(limit.timesAllowed).toDecimalPlaces(3).toFixed(),
  );
  return (
    <div>
      <p>
        <State kind={isOver ? 'watch' : 'ready'}>{(isOver ? words.worstOver : words.worst)(told)}</State>
      </p>
      <Disclosure isBench title={words.worstWorking}>
        {() => (
          <>
            <p>{words.worstEquation}</p>
            <p>
              {figures} = {told}
            </p>
            <p className="soft">{words.worstNote}</p>
          </>
        )}
      </Disclosure>
    </div>
  );
}

/** From half of a limit on it is worth a look (common practice, no source). */
const NEAR = '0.5';
