import { done } from '../../core/problem.ts';
import { readAtOnce } from '../read-at-once.ts';
import type { UseCase } from '../use-case.ts';
import { listMakings } from './list-makings.ts';
import { listPapers } from './list-papers.ts';
import { listParcels } from './list-parcels.ts';
import { listPurchases } from './list-purchases.ts';
import { readMorning } from './read-morning.ts';
import { sayMorning } from './say-morning.ts';

/** The first page of the day: what to send, to make, to buy, each one tap from doing it. */
export const getMorning: UseCase<'getMorning'> = async (context) => {
  const data = await readAtOnce(context, readMorning);
  return done({
    today: data.book.today,
    now: data.book.now,
    sentence: sayMorning(data),
    sendToday: listParcels(data),
    makeNext: listMakings(data),
    buyThisWeek: listPurchases(data),
    papers: await listPapers(context, data.book.today),
  });
};
