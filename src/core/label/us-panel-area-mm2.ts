import { type Exact, exact } from '../quantity/index.ts';

/** The panel that a buyer sees first: a round lid, a flat face, or a strip round a jar. */
export type Panel =
  | { readonly shape: 'round'; readonly diameterMm: number }
  | { readonly shape: 'rectangle'; readonly widthMm: number; readonly heightMm: number }
  | { readonly shape: 'wrap'; readonly circumferenceMm: number; readonly heightMm: number };

/**
 * Area of the principal display panel in square millimetres, exact but for pi: a face as it is, 40 % of height times
 * circumference for a strip round a cylinder, all of a round lid. Source: 21 CFR 701.13 (rectangle and cylinder read in
 * summaries; the round top as an "obvious principal display panel" from memory).
 */
export function usPanelAreaMm2(panel: Panel): Exact {
  if (panel.shape === 'wrap') return exact(panel.circumferenceMm).times(panel.heightMm).times('0.4');
  if (panel.shape === 'rectangle') return exact(panel.widthMm).times(panel.heightMm);
  return exact(panel.diameterMm).pow(2).times(Math.PI).div(4);
}
