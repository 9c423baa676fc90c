export {
  type BatchPlan,
  type BatchToPlan,
  type ItemShort,
  type PlannedLine,
  planBatch,
} from './plan-batch.ts';
