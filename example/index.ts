import { must } from '../src/core/problem.ts';
import { type Context, openDoors } from '../src/work/index.ts';
import { benchHand } from './bench-hand.ts';
import { checkScales, testScales } from './check-scales.ts';
import { designLabels } from './design-labels.ts';
import { makeAndFill, makeBase } from './make-and-fill.ts';
import { addProducts, cancelOne, enterOrders, sendOrder } from './sell.ts';
import { addMaterials, countTheShelf, holdOneTub, takeGoodsIn } from './stock-up.ts';
import { CUSTOMERS, PEOPLE, SCALES, WORKSHOP } from './workshop-data.ts';
import { enterComplaint, writeProductFile } from './write-file.ts';
import { decideUnknowns, enterReports, writeRecipes } from './write-recipes.ts';

/** Twenty tins as a hand fills them, in hundredths of a gram above the aim: invented, spread 0.05 g. */
const BALM_SCATTER = [8, 14, 5, 11, 2, 9, 16, 7, 4, 12, 6, 10, 3, 13, 8, 18, 5, 9, 1, 11];

/** Fills an empty file with the example workshop: six weeks of work, written through the use-cases like any other. */
export async function buildExample(context: Context): Promise<void> {
  const hand = benchHand(context);
  hand.at(-42, 8);
  const begun = must(
    await openDoors(hand.context, { name: WORKSHOP.name, firstPerson: PEOPLE[0], isExample: true }),
  );
  hand.setPerson(begun.people[0]?.id ?? '');
  await hand.write('savePerson', { name: PEOPLE[1] });
  await hand.write('changeWorkshop', { version: begun.version, details: WORKSHOP });
  const scales = new Map<string, string>();
  for (const { key, ...scale } of SCALES) {
    const said = { ...scale, repeatabilityGrams: null, accuracyClass: null, verificationIntervalGrams: null };
    scales.set(key, (await hand.write('saveScale', { scale: said })).id);
  }
  await testScales(hand, scales);
  hand.at(-42, 17);
  const goods = await addMaterials(hand);
  await countTheShelf(hand, goods);
  hand.at(-40, 9);
  await takeGoodsIn(hand, goods);
  const recipes = await writeRecipes(hand, goods);
  await enterReports(hand, goods, recipes);
  await decideUnknowns(hand, recipes);
  const products = await addProducts(hand, goods, recipes);
  await designLabels(hand, products.lavender);
  const customers = new Map<string, string>();
  for (const { key, name, address } of CUSTOMERS)
    customers.set(key, (await hand.write('saveCustomer', { name, address })).id);
  const small = scales.get('small') ?? '';

  hand.at(-34, 9);
  const firstBase = await makeBase(hand, recipes.base, 1000, 8);
  hand.at(-33, 10);
  await hand.write('sayFirm', { remark: '' }, { id: firstBase });
  const runs: string[] = [];
  const fill = async (
    day: number,
    formulaId: string,
    productId: string,
    units: number,
    tareGrams: string,
    over: number[],
  ) => {
    hand.at(day, 9, 30);
    runs.push(await makeAndFill(hand, { formulaId, productId, units, scaleId: small, tareGrams, over }));
    return runs.at(-1) ?? '';
  };
  const release = (id: string) => hand.write('releaseRun', { verdict: 'released', reason: '' }, { id });
  await release(
    await fill(-32, recipes.orange, products.orange, 10, '11.40', [12, 4, 21, 8, 15, 3, 10, 6, 72, 9]),
  );
  await release(await fill(-24, recipes.lavender, products.lavender, 8, '11.40', [6, 18, 9, 25, 11]));
  await release(await fill(-15, recipes.balm, products.balm, 20, '8.20', BALM_SCATTER));
  const orders = await enterOrders(hand, products, customers);
  await sendOrder(hand, orders.sent1, -26);
  await sendOrder(hand, orders.sent2, -12);
  await sendOrder(hand, orders.partSent, -3);
  await cancelOne(hand, orders.cancelled, -8);
  await enterComplaint(hand, products.orange, runs[0] ?? '');
  hand.at(-6, 19);
  await writeProductFile(hand, products.orange, goods);
  hand.at(-4, 9);
  const secondBase = await makeBase(hand, recipes.base, 600, 6, {
    poured: { item: 'Sunflower oil', share: 0.7 },
  });
  hand.at(-3, 11);
  await hand.write('sayFirm', { remark: '' }, { id: secondBase });
  await fill(-2, recipes.orange, products.orange, 6, '11.40', [9, 14, 5, 19, 7, 11]);
  await checkScales(hand, scales);
  hand.at(-1, 8);
  await holdOneTub(hand, goods);
  hand.at(-1, 15);
  await makeBase(hand, recipes.base, 500, 5, { isOverpoured: true });
  hand.at(-1, 17);
  await hand.write('reserveOrder', {}, { id: orders.ready });
}
