import type { Market } from '../contract/index.ts';
import type { JudgedPlace } from '../core/safety/index.ts';
import type { FormulaDraft } from './check-draft.ts';
import { usesOf } from './uses-of.ts';

/** Every market with every use that a formula is judged for, as if its first unit were supplied on that day. */
export const placesOf = (draft: FormulaDraft, markets: readonly Market[], date: string): JudgedPlace[] =>
  markets.flatMap((market) =>
    usesOf(draft).map(({ use, category, bodyPart, productType }) => ({
      context: {
        market,
        use,
        category,
        date,
        ...(bodyPart !== '' && { bodyPart }),
        ...(productType !== '' && { productType }),
        ...(draft.minAgeMonths !== null && { minAgeMonths: draft.minAgeMonths }),
      },
      about: market,
    })),
  );
