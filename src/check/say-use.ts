import { saying } from '../contract/index.ts';
import type { ProductKind } from '../core/safety/index.ts';
import { say } from '../words/index.ts';

/** What a product is used as, in the words of the tables: "face cream, stays on, category 5B". */
export const sayUse = ({ use, category, bodyPart = '', productType = '' }: ProductKind): string =>
  say(
    saying('product-use', {
      what: (productType || bodyPart).replaceAll('-', ' '),
      hasWhat: (productType || bodyPart) !== '',
      isRinsed: use === 'rinse-off',
      category,
    }),
  );
