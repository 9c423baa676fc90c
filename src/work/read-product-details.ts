import type { orders } from '../contract/index.ts';

type Unasked = Pick<
  orders.ProductDetails,
  'saleCountries' | 'scentOnLabel' | 'noOpenedPeriod' | 'texts' | 'gtin' | 'headspacePercent'
>;

/** What a product that was written down before these were asked for stands as. */
const UNASKED: Unasked = {
  saleCountries: [],
  scentOnLabel: 'by-name',
  noOpenedPeriod: '',
  texts: {},
  gtin: '',
  headspacePercent: '0',
};

/** A product's details as they are stored, or as a run took them over. */
export const readProductDetails = (json: string): orders.ProductDetails => ({
  ...UNASKED,
  ...(JSON.parse(json) as Omit<orders.ProductDetails, keyof Unasked>),
});
