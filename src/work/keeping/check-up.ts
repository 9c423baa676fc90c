import { done } from '../../core/problem.ts';
import { type CheckName, type Finding, checkUp as lookThrough } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { UseCase } from '../use-case.ts';

const ASKED: Readonly<Record<CheckName, string>> = {
  integrity: 'check-integrity',
  'foreign-keys': 'check-foreign-keys',
  chain: 'check-chain',
  sequence: 'check-sequence',
  end: 'check-end',
  records: 'check-records',
  rows: 'check-rows',
  balances: 'check-balances',
};

const shown = ({ check, looked, wrong }: Finding) => ({
  what: say({ code: ASKED[check], parameters: { looked } }),
  isSound: wrong.length === 0,
  detail:
    wrong.length === 0
      ? say({ code: 'check-sound', parameters: {} })
      : say({
          code: 'check-wrong',
          parameters: { count: wrong.length, which: wrong.slice(0, 10).join('; ') },
        }),
});

export const checkUp: UseCase<'checkUp'> = async ({ storage }) => {
  const findings = (await lookThrough(storage)).map(shown);
  return done({ isSound: findings.every((finding) => finding.isSound), findings });
};
