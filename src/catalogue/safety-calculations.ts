import { allergens } from './allergens.ts';
import { exposure } from './exposure.ts';
import { largestScent } from './largest-scent.ts';
import { limits } from './limits.ts';
import { lowWater } from './low-water.ts';

export const safetyCalculations = [allergens, limits, exposure, largestScent, lowWater] as const;
