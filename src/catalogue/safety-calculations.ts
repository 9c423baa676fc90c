import { allergens } from './allergens.ts';
import { exposure } from './exposure.ts';
import { limits } from './limits.ts';

export const safetyCalculations = [allergens, limits, exposure] as const;
