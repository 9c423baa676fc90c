export {
  COMPLAINT_KINDS,
  type ComplaintKind,
  EFFECTS,
  type Effect,
  type JudgedEffect,
  judgeEffect,
  SERIOUS_MARKS,
  type SeriousMark,
} from './judge-effect.ts';
export { type KeepUntil, keepFileUntil, type LastPlaced, mustKeep } from './keep-file-until.ts';
export { listTellings, type Telling, type TellingRule } from './list-tellings.ts';
export { ratePerThousand } from './rate-per-thousand.ts';
