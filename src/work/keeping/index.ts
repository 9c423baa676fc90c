import type { UseCases } from '../use-case.ts';
import { backUp } from './back-up.ts';
import { checkUp } from './check-up.ts';
import { exportCsv, exportJson } from './export-all.ts';

export { backUpIfDue } from './back-up.ts';
export { isWorkshopEmpty, openWorkshop, workshopFile } from './open-workshop.ts';
export { problemOfFailure } from './problem-of-failure.ts';
export { restoreWorkshop } from './restore-workshop.ts';

export const keepingUseCases = { backUp, checkUp, exportCsv, exportJson } satisfies UseCases<
  'backUp' | 'checkUp' | 'exportCsv' | 'exportJson'
>;
