import { done, problem, type Result, refused } from '../problem.ts';
import { normalShareBelow } from './normal-share.ts';

export interface Weighed {
  /** Mean of what was weighed, and how many that were. */
  readonly mean: number;
  readonly meanOf: number;
  readonly standardDeviation: number;
  readonly degreesOfFreedom: number;
}

/** Widths of the two integrals in standard deviations, and their halves of Simpson's rule: error below 1e-6. */
const REACH = 9;
const PANELS = { mean: 160, spread: 160 } as const;

/**
 * Chance that each of so many further weights reaches the least one, 0 to 1; no unit.
 *
 * Equation: E[ F(k w + u / sqrt(n))^m ] with k = (mean - least) / s, F the standard normal distribution, u standard
 * normal (the mean of n weights is not the true one), w^2 = chi-squared / degrees of freedom (nor is s). For m = 1 it is
 * Student's prediction interval: t = k / sqrt(1 + 1/n).
 * Valid range: s > 0, n >= 1, degrees of freedom 1 to 100 000, m >= 0; weights that scatter normally and alike, without
 * drift. Error below 1e-6. Source: Hahn and Meeker, Statistical Intervals, prediction of all of m further observations
 * (from memory); for one, NIST/SEMATECH e-Handbook 7.1.4 and Student's distribution.
 */
export function chanceAllReach(weighed: Weighed, least: number, further: number): Result<number> {
  const { mean, meanOf, standardDeviation, degreesOfFreedom } = weighed;
  if (!(standardDeviation > 0))
    return refused(problem('value-not-above', 'standardDeviation', { found: standardDeviation, allowed: 0 }));
  if (!(meanOf >= 1 && degreesOfFreedom >= 1))
    return refused(
      problem('value-not-above', 'meanOf', { found: Math.min(meanOf, degreesOfFreedom), allowed: 0 }),
    );
  if (further === 0) return done(1);
  const k = (mean - least) / standardDeviation;
  const spread = weightsOfSpread(degreesOfFreedom);
  const chance = simpson(-REACH, REACH, PANELS.mean, (u) => {
    const shift = u / Math.sqrt(meanOf);
    const all = spread.reduce(
      (sum, { w, weight }) => sum + weight * normalShareBelow(k * w + shift) ** further,
      0,
    );
    return (all * Math.exp((-u * u) / 2)) / Math.sqrt(2 * Math.PI);
  });
  return done(Math.min(1, Math.max(0, chance)));
}

/** Nodes of w = sqrt(chi-squared / f) with what each counts; they add up to 1. */
function weightsOfSpread(f: number): { readonly w: number; readonly weight: number }[] {
  const wide = REACH / Math.sqrt(2 * f);
  const [from, to] = [Math.max(0, 1 - wide), 1 + wide];
  const step = (to - from) / PANELS.spread;
  // Relative to its top at sqrt((f - 1) / f), so that no power overflows.
  const logDensity = (w: number) => (f - 1) * Math.log(w) - (f * w * w) / 2;
  const top = f === 1 ? 0 : logDensity(Math.sqrt((f - 1) / f));
  const nodes = Array.from({ length: PANELS.spread + 1 }, (_, index) => {
    const w = from + index * step;
    const height = w === 0 ? (f === 1 ? 1 : 0) : Math.exp(logDensity(w) - top);
    return { w, weight: height * simpsonWeight(index, PANELS.spread) };
  });
  const sum = nodes.reduce((total, { weight }) => total + weight, 0);
  return nodes.map(({ w, weight }) => ({ w, weight: weight / sum }));
}

const simpsonWeight = (index: number, panels: number): number => {
  if (index === 0 || index === panels) return 1;
  return index % 2 === 1 ? 4 : 2;
};

function simpson(from: number, to: number, panels: number, value: (x: number) => number): number {
  const step = (to - from) / panels;
  let sum = 0;
  for (let index = 0; index <= panels; index += 1)
    sum += simpsonWeight(index, panels) * value(from + index * step);
  return (sum * step) / 3;
}
