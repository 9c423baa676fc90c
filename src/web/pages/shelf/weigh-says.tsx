import type { Result } from '../../../core/problem.ts';
import { shelfWords } from '../../../words/index.ts';
import { showAmount } from '../../show/show-amount.ts';
import type { Lot } from './shelf-item.ts';
import { differenceFrom } from './weigh-draft.ts';

interface Props {
  readonly found: Result<string>;
  readonly lot: Lot;
  readonly onTheBooks: string;
}

const { count: words } = shelfWords;

function differenceInWords(difference: string, unit: Lot['unit']): string {
  if (difference === '0') return words.same;
  return difference.startsWith('-')
    ? words.less(showAmount(difference.slice(1), unit))
    : words.more(showAmount(difference, unit));
}

/** The answer of a weighing while it is being typed. */
export function WeighSays({ found, lot, onTheBooks }: Props) {
  if (!found.ok) {
    const is = (wanted: string) => found.problems.some(({ code }) => code === wanted);
    if (is('tare-above-gross')) return words.below;
    if (is('tare-not-said')) return words.waitsForTare(lot.itemName);
    return words.saysNothing(lot.itemName, showAmount(onTheBooks, lot.unit));
  }
  const amount = showAmount(found.value, lot.unit);
  const says = lot.unit === 'g' ? words.says(amount, lot.itemName) : words.saysPieces(amount, lot.itemName);
  return (
    <span aria-live="polite">
      {says} {differenceInWords(differenceFrom(found.value, onTheBooks), lot.unit)}
    </span>
  );
}
