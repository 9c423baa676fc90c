import type { making } from '../../contract/index.ts';
import { makingWords, mishapWords as words } from '../../words/index.ts';
import type { BatchView } from './batch-view.ts';

export interface Mishap {
  readonly what: string;
  readonly why: string;
  readonly at: string;
  readonly by: string;
}

/** Everything of a batch that did not go as planned, in the order in which it happened. */
export function listMishaps(batch: BatchView): Mishap[] {
  const deviations = batch.deviations.map(({ step, offGrams, what, why, at, by }) => ({
    what: makingWords.deviationAt(step, offGrams) + what,
    why,
    at,
    by,
  }));
  const resizes = batch.resizes.map(({ wasGrams, isGrams, item, reason, at, by }) => ({
    what: words.resized(wasGrams, isGrams),
    why: words.resizedBy(item, reason),
    at,
    by,
  }));
  const spills = batch.spills.map(({ item, grams, lotNumber, reason, at, by }) => ({
    what: words.spilt(item, grams, lotNumber),
    why: reason,
    at,
    by,
  }));
  const all = [...deviations, ...resizes, ...spills, ...batch.screens.flatMap(listReadings)];
  return all.sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

function listReadings(screen: BatchView['screens'][number]): Mishap[] {
  if (screen.kind !== 'addition') return [];
  return screen.entries.flatMap((entry) => sayReading(screen.itemName, entry));
}

function sayReading(item: string, { reading, actualGrams, at, by }: making.WeighedIn): Mishap[] {
  if (reading === null) return [];
  const { asked, vessel } = reading;
  const told: Pick<Mishap, 'what' | 'why'>[] = [];
  if (asked?.wasGrams != null)
    told.push({ what: words.readFirst(item, asked.wasGrams), why: words.putRight });
  else if (asked) told.push({ what: words.readSure(item, actualGrams), why: words.isSure });
  if (vessel) told.push({ what: words.inVessel(item, vessel.grossGrams, vessel.tareGrams), why: '' });
  return told.map((each) => ({ ...each, at, by }));
}
