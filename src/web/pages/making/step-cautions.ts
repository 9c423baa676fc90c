import type { stepWords } from '../../../words/index.ts';
import type { Step } from './batch.ts';

export type Caution = Exclude<keyof typeof stepWords.cautions, 'title' | 'more' | 'source'>;

type Of = Pick<Step, 'stepKind' | 'leastCelsius' | 'mostCelsius' | 'what'>;

/** Warmer than a hand bears for long: fat of this heat burns (common practice, no source). */
const HOT_CELSIUS = 45;
const isHot = ({ leastCelsius, mostCelsius }: Of): boolean =>
  [leastCelsius, mostCelsius].some((celsius) => celsius !== null && Number(celsius) >= HOT_CELSIUS);

const HEATED: readonly Caution[] = ['not-alone', 'hot-fat', 'water-bath', 'no-water'];
const POWDER = /starch|clay|powder|flour|oat|mica|arrowroot|cocoa powder|bicarbonate/i;

/** What a careful hand is told before a step, the gravest first: by its kind, its heat, and powders that it names. */
export function cautionsOf(step: Of): Caution[] {
  const dust: Caution[] = POWDER.test(step.what) ? ['dust-cloud'] : [];
  switch (step.stepKind) {
    case 'melt':
      return [...HEATED, ...dust];
    case 'hold':
      return [...HEATED, ...dust];
    case 'cool':
      return ['stays-hot', 'no-water', 'condensation'];
    case 'cover':
      return ['condensation'];
    case 'set':
      return ['condensation'];
    case 'whip':
      return ['turning-whisk'];
    case 'mix':
      return [...(isHot(step) ? (['hot-fat', 'no-water'] as const) : []), ...dust];
    case 'weigh':
    case 'cup':
      return [];
    case 'other':
      return isHot(step) ? [...HEATED, ...dust] : dust;
  }
}
