import type { z } from 'zod';
import type { stock } from '../../contract/index.ts';
import type { GoodsOrderedRow } from '../../storage/index.ts';

type GoodsView = z.output<typeof stock.goodsOnTheirWay>;

export const viewGoods = (goods: GoodsOrderedRow | undefined): GoodsView | null =>
  goods?.ordered_on
    ? { orderedOn: goods.ordered_on, supplier: goods.supplier, expectedOn: goods.expected_on }
    : null;
