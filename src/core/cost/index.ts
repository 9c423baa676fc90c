export { type BatchCost, type BatchToCost, costBatch } from './cost-batch.ts';
export {
  type CostedLot,
  type CostRow,
  type CostSource,
  costOfRun,
  type RunCost,
  type RunToCost,
} from './cost-of-run.ts';
export { type SharedPennies, sharePennies } from './share-pennies.ts';
