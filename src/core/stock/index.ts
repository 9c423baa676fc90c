export { balanceMass, type MassAccount, type MassBalance } from './balance-mass.ts';
export {
  chooseFirstExpiry,
  type FirstExpiry,
  type Issue,
  type LotStatus,
  type LotToUse,
} from './choose-first-expiry.ts';
export { type NetNeed, netNeeds, sortByMaking } from './net-needs.ts';
export { promiseDate } from './promise-date.ts';
export type {
  PromiseAnswer,
  PromiseItem,
  PromiseLot,
  PromiseMaking,
  PromisePart,
  PromiseQuestion,
  PromiseSaying,
  PromiseShort,
  PromiseStep,
} from './promise-question.ts';
export { type LotUse, shareLots } from './share-lots.ts';
export { type Trace, type TraceQuestion, traceBack, traceLots } from './trace-lots.ts';
export { type LotAtDepth, type MadeFrom, walkLots, wentInto } from './walk-lots.ts';
