import type { trace } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { listMakings } from './list-makings.ts';
import { listParcels } from './list-parcels.ts';
import { listPurchases } from './list-purchases.ts';
import { readMorning } from './read-morning.ts';
import { sayBeginning, sayMorning } from './say-morning.ts';
import { titleOf } from './title-of.ts';

/** The first page of the day: what to send, to make, to buy, each one tap from doing it. */
export const getMorning: UseCase<'getMorning'> = async (context) => {
  const data = await readMorning(context);
  const beginning = sayBeginning(data);
  return done({
    today: data.book.today,
    now: data.book.now,
    sentence: sayMorning(data),
    sendToday: listParcels(data),
    makeNext: [...(beginning ? [beginLine(beginning.code)] : []), ...listMakings(data)],
    buyThisWeek: listPurchases(data),
  });
};

const FIRST_STEPS: Readonly<Record<string, string>> = {
  'morning-first-materials': '/materials/new',
  'morning-first-count': '/shelf/opening',
  'morning-first-formula': '/formulas/new',
  'morning-first-product': '/products/new',
};

const beginLine = (code: string): trace.MorningLine => ({
  key: 'begin',
  title: titleOf('morning-begin', {}),
  state: 'ready',
  stateWord: saying('morning-first-step'),
  detail: [saying(code)],
  action: { words: saying('morning-begin-act'), to: FIRST_STEPS[code] ?? '/' },
  level: null,
});
