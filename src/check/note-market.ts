import { type Market, type Saying, saying } from '../contract/index.ts';
import type { Checked } from './checked.ts';

/** Only what is washed off can be soap by law; its category or its product type tells. */
const maybeSoap = ({ opened: { details } }: Checked): boolean =>
  details.productType === 'soap' || details.category === '9';

/** What the tables leave out in a market, said once whatever is in the formula. */
export const noteMarket = (market: Market, checked: Checked): Saying[] =>
  market === 'US'
    ? [
        saying('market-us-federal-only'),
        saying('market-us-no-allergen-list'),
        ...(maybeSoap(checked) ? [saying('market-us-soap')] : []),
      ]
    : [];
