import type { BenchHand } from './bench-hand.ts';
import { type Goods, idOf } from './stock-up.ts';
import type { Recipes } from './write-recipes.ts';

export interface Products {
  readonly orange: string;
  readonly lavender: string;
  readonly balm: string;
}

const ROUND_60 = { shape: 'round' as const, width: 62, height: 62 };
const ROUND_30 = { shape: 'round' as const, width: 50, height: 50 };

/** Two whipped butters in 60 ml tins and a poured balm in 30 ml tins. */
export async function addProducts(hand: BenchHand, goods: Goods, recipes: Recipes): Promise<Products> {
  const add = async (
    name: string,
    formulaId: string,
    declaredGrams: string,
    size: '60' | '30',
    price: string,
    functionText: string,
    precautions: string,
  ) =>
    (
      await hand.write('saveProduct', {
        details: {
          name,
          formulaId,
          declaredGrams,
          functionText,
          precautions,
          price,
          tinId: idOf(goods, `tin${size}`),
          lidId: idOf(goods, `lid${size}`),
          labelId: idOf(goods, `label${size}`),
          aimGrams: null,
          fillBasis: 'minimum',
          bowlLossPercent: '3',
          retainedGrams: '10',
          markets: ['GB', 'NI'],
          bestBeforeMonths: 12,
          openedMonths: 6,
          faceMm: size === '60' ? ROUND_60 : ROUND_30,
          backMm: size === '60' ? ROUND_60 : ROUND_30,
          isWithdrawn: false,
        },
      })
    ).id;
  const skin = 'For outward use only. Keep away from eyes. Stop using it if the skin is irritated.';
  return {
    orange: await add(
      'Orange and cedar whipped butter',
      recipes.orange,
      '35',
      '60',
      '9.50',
      'Body butter',
      skin,
    ),
    lavender: await add('Lavender whipped butter', recipes.lavender, '35', '60', '9.50', 'Body butter', skin),
    balm: await add(
      'Peppermint foot balm',
      recipes.balm,
      '25',
      '30',
      '7.00',
      'Foot balm',
      `${skin} Not on broken skin.`,
    ),
  };
}

export interface Orders {
  readonly sent1: string;
  readonly sent2: string;
  readonly partSent: string;
  readonly cancelled: string;
  readonly ready: string;
}

/** Eight orders: two sent, one sent in part, one cancelled, one kept and ready, three open. */
export async function enterOrders(
  hand: BenchHand,
  products: Products,
  customers: ReadonlyMap<string, string>,
): Promise<Orders> {
  const enter = async (
    who: string | null,
    placed: number,
    wanted: number,
    note: string,
    lines: [string, number][],
  ) => {
    hand.at(placed, 18);
    const customerId = who === null ? null : (customers.get(who) ?? null);
    const body = {
      customerId,
      placedOn: hand.dateIn(placed),
      wantedBy: hand.dateIn(wanted),
      note,
      lines: lines.map(([productId, units]) => ({ productId, units })),
    };
    return (await hand.write('saveOrder', body)).id;
  };
  const sent1 = await enter('tamsin', -28, -24, '', [[products.orange, 4]]);
  const sent2 = await enter('woolgate', -14, -10, '', [
    [products.lavender, 4],
    [products.balm, 4],
  ]);
  const cancelled = await enter('aldous', -10, -2, '', [[products.balm, 2]]);
  const partSent = await enter('woolgate', -5, 4, 'Send what is there, the rest when it is made.', [
    [products.lavender, 6],
  ]);
  const ready = await enter('maes', -2, 0, 'A gift: no prices in the parcel.', [
    [products.orange, 2],
    [products.balm, 1],
  ]);
  await enter('okoro', -1, 1, '', [[products.balm, 3]]);
  await enter('tamsin', -1, 3, '', [[products.orange, 5]]);
  await enter('aldous', -1, 12, '', [
    [products.lavender, 30],
    [products.balm, 10],
  ]);
  return { sent1, sent2, partSent, cancelled, ready };
}

export async function sendOrder(hand: BenchHand, id: string, day: number): Promise<void> {
  hand.at(day, 14);
  await hand.write('dispatchOrder', { tracking: '' }, { id });
}

export async function cancelOne(hand: BenchHand, id: string, day: number): Promise<void> {
  hand.at(day, 10);
  const order = await hand.read('getOrder', { params: { id } });
  await hand.write('cancelOrder', { version: order.version, reason: 'Ordered twice by mistake' }, { id });
}
