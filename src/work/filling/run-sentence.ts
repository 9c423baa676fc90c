import type { Saying } from '../../contract/index.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import { sumHolds } from './name-hold.ts';
import type { RunRecords } from './run-records.ts';
import type { Check, RunView } from './run-shapes.ts';

/** How the run stands, in one sentence. */
export function sayRun(
  state: RunView['state'],
  { head, close, release }: RunRecords,
  summary: RunView['summary'],
  checks: readonly Check[],
): Saying {
  if (release) {
    const facts = { units: close?.units ?? 0, by: release.person_name };
    return saying(state === 'released' ? 'run-released' : 'run-rejected', facts);
  }
  if (state === 'closed') {
    const units = close?.units ?? 0;
    const holds = sumHolds(checks);
    return holds ? saying('run-held', { units, ...holds }) : saying('run-waits-for-release', { units });
  }
  const aimGrams = gramsText(head.aim_ug);
  const { filled, stillToFill, bowlHolds, tooLight } = summary;
  if (filled === 0) return saying('run-begins', { wanted: head.wanted, aimGrams });
  if (tooLight > 0) return saying('run-has-light-tins', { count: tooLight, stillToFill });
  if (summary.verdict === 'reject') return saying('run-mean-too-low');
  if (stillToFill === 0) return saying('run-is-full', { filled });
  if (bowlHolds === 0) return saying('run-bowl-is-empty', { filled, stillToFill });
  return saying('run-goes-on', { filled, stillToFill, aimGrams });
}
