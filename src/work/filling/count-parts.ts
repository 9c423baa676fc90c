import { problem } from '../../core/problem.ts';
import { giveUp } from '../../storage/index.ts';
import type { RequestOf } from '../use-case.ts';
import type { PackagingNeed } from './issue-packaging.ts';
import type { RunView } from './run-shapes.ts';

export interface PartCount {
  readonly part: PackagingNeed['part'];
  readonly issued: number | null;
  readonly used: number;
  readonly spoilt: number;
  readonly back: number | null;
}

type Body = Pick<RequestOf<'closeRun'>['body'], 'backTins' | 'backLids' | 'backLabels'>;

/** What was counted out before the first tin, used, spoilt and put back. More used than counted out is a slip. */
export function countParts(
  needs: readonly PackagingNeed[],
  issued: RunView['ready']['issued'],
  { backTins, backLids, backLabels }: Body,
): PartCount[] {
  const out = { tin: issued?.tins ?? null, lid: issued?.lids ?? null, label: issued?.labels ?? null };
  const back = { tin: backTins, lid: backLids, label: backLabels };
  return needs.map(({ part, used, spoilt }) => {
    const count = { part, issued: out[part], used, spoilt, back: back[part] };
    refuseMoreThanIssued(count);
    return count;
  });
}

function refuseMoreThanIssued({ part, issued, used, spoilt, back }: PartCount): void {
  const accounted = used + spoilt + (back ?? 0);
  if (issued === null || accounted <= issued) return;
  giveUp(
    problem('more-than-counted-out', WHERE[part], {
      found: accounted,
      allowed: issued,
      parameters: { part, used, spoilt, back: back ?? 0 },
    }),
  );
}

const WHERE = { tin: 'backTins', lid: 'backLids', label: 'backLabels' } as const;
