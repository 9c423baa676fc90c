import { allergens } from './allergens.ts';
import { limits } from './limits.ts';

export const safetyCalculations = [allergens, limits] as const;
