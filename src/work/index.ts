import { workshopUseCases } from './workshop/index.ts';

/** Every use-case by the name of its route: each room spreads its own here. */
export const useCases = {
  ...workshopUseCases,
};
