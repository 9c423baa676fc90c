import {
  type ExposureProductType,
  exposureParameters,
  exposureProductTypes,
  exposureSources,
} from '../../reference/index.ts';

/** A row of the Notes' parameters. One that is not there is a mistake of ours. */
function parameter(id: string) {
  const row = exposureParameters.find((one) => one.id === id);
  if (!row) throw new Error(`the exposure table has no ${id}`);
  return row;
}

export const ABSORPTION = parameter('default-dermal-absorption-no-data');
export const BIOAVAILABILITY = parameter('oral-bioavailability-default');
export const LEAST_MARGIN = parameter('mos-minimum');
export const BODY_WEIGHT = parameter('default-adult-body-weight');

const SOURCES = new Map(exposureSources.map(({ id, title }) => [id, title]));
export const exposureSource = (id: string): string => SOURCES.get(id) ?? id;

/** What the restrictions call otherwise than the exposure table does: a judgement, as its mappings are. */
const ALSO_CALLED: Readonly<Record<string, string>> = {
  deodorant: 'deodorant-nonspray',
  'roll-on-deodorant': 'deodorant-nonspray',
  lipstick: 'lip-product',
  'face-make-up': 'liquid-foundation',
  'hand-wash': 'hand-wash-soap',
  toothpaste: 'toothpaste-adult',
};

/** The row for a formula's product type, where the table has one. */
export const exposureOfProductType = (productType: string): ExposureProductType | undefined =>
  findExposureType(ALSO_CALLED[productType] ?? productType);

export const findExposureType = (id: string): ExposureProductType | undefined =>
  exposureProductTypes.find((row) => row.id === id);

/** What is licked off lips or stays in the mouth is swallowed: the whole of it counts, by mouth. */
export const isSwallowed = ({ id, use }: ExposureProductType): boolean =>
  id === 'lip-product' || use === 'oral';
