export {
  type AskedOfPosition,
  judgePosition,
  type PositionState,
  type StandingWeighing,
} from './judge-position.ts';
export {
  type BatchPlan,
  type BatchToPlan,
  type ItemShort,
  type PlannedLine,
  planBatch,
} from './plan-batch.ts';
