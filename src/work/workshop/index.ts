import type { UseCases } from '../use-case.ts';
import { beginWorkshop } from './begin-workshop.ts';
import { changeWorkshop } from './change-workshop.ts';
import { getFirstSteps } from './get-first-steps.ts';
import { getWorkshop } from './get-workshop.ts';
import { savePerson } from './save-person.ts';
import { savePlace } from './save-place.ts';
import { saveScale } from './save-scale.ts';

export { type Beginning, openDoors } from './begin-workshop.ts';
export { fillWithExample } from './fill-with-example.ts';

export const workshopUseCases = {
  getWorkshop,
  beginWorkshop,
  getFirstSteps,
  changeWorkshop,
  savePerson,
  saveScale,
  savePlace,
} satisfies UseCases<
  | 'getWorkshop'
  | 'getFirstSteps'
  | 'beginWorkshop'
  | 'changeWorkshop'
  | 'savePerson'
  | 'saveScale'
  | 'savePlace'
>;
