export { judgeYield, type YieldToJudge, type YieldVerdict } from './judge-yield.ts';
export {
  type BatchPlan,
  type BatchToPlan,
  type ItemShort,
  type PlannedLine,
  planBatch,
} from './plan-batch.ts';
