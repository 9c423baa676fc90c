import type { RouteName } from '../contract/index.ts';
import { answerUseCases } from './answers/index.ts';
import { awayUseCases } from './away/index.ts';
import { certificateUseCases } from './certificates/index.ts';
import { complaintUseCases } from './complaints/index.ts';
import { fillingUseCases } from './filling/index.ts';
import { formulaUseCases } from './formulas/index.ts';
import { keepingUseCases } from './keeping/index.ts';
import { labelUseCases } from './labels/index.ts';
import { makingUseCases } from './making/index.ts';
import { morningUseCases } from './morning/index.ts';
import { noteRequests } from './note-requests.ts';
import { orderUseCases } from './orders/index.ts';
import { productFileUseCases } from './product-files/index.ts';
import { reachUseCases } from './reach/index.ts';
import { scaleUseCases } from './scales/index.ts';
import { stockUseCases } from './stock/index.ts';
import { traceUseCases } from './trace/index.ts';
import type { UseCases } from './use-case.ts';
import { workshopUseCases } from './workshop/index.ts';

export type { Context } from './context.ts';
export {
  backUpIfDue,
  isWorkshopEmpty,
  openWorkshop,
  problemOfFailure,
  restoreWorkshop,
  workshopFile,
} from './keeping/index.ts';
export { workshopZone } from './local-date.ts';
export {
  type Asker,
  admitDevice,
  mayBeSigned,
  type Network,
  type NetworkDoor,
  type NetworkState,
  PairingDesk,
  recogniseDevice,
  type WayIn,
} from './reach/index.ts';
export type { OpenUseCase, OpenUseCases, Paper, RequestOf } from './use-case.ts';
export { type Beginning, fillWithExample, openDoors } from './workshop/index.ts';

/** All rows of the table but those that need no workshop: the server answers these itself. */
export type WorkRoute = Exclude<RouteName, 'listCalculations' | 'calculate' | 'getHealth' | 'pairDevice'>;

/** Every use-case by the name of its route: each room spreads its own here. */
export const useCases = noteRequests({
  ...certificateUseCases,
  ...keepingUseCases,
  ...answerUseCases,
  ...awayUseCases,
  ...complaintUseCases,
  ...fillingUseCases,
  ...formulaUseCases,
  ...labelUseCases,
  ...makingUseCases,
  ...morningUseCases,
  ...orderUseCases,
  ...productFileUseCases,
  ...reachUseCases,
  ...scaleUseCases,
  ...stockUseCases,
  ...traceUseCases,
  ...workshopUseCases,
} satisfies UseCases<WorkRoute>);
