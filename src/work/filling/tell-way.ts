import { gramsText } from '../quantity-text.ts';
import type { MeasuredWay } from './measure-way.ts';

/** What the chain keeps of how tins are weighed. */
export const tellWay = (way: MeasuredWay) => ({
  way: way.way,
  tareGrams: way.tare_ug === null ? null : gramsText(way.tare_ug),
  tares: JSON.parse(way.tares) as string[],
  tareSpreadGrams: way.tare_spread_ug === null ? null : gramsText(way.tare_spread_ug),
  errorGrams: gramsText(way.error_ug),
  aimGrams: gramsText(way.aim_ug),
});
