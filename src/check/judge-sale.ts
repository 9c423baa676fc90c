import type { Market } from '../contract/index.ts';
import { saying } from '../contract/index.ts';
import { answerOf, type SaleAnswer } from './answer-check.ts';
import type { Checked } from './checked.ts';
import { listReasons, type ToldReason } from './list-reasons.ts';

export interface SaleJudgement {
  readonly answer: SaleAnswer;
  /** What stops it first, then what somebody has to decide, then what is only to be seen. */
  readonly reasons: readonly ToldReason[];
}

/** May it be made for sale in all of these markets? The one judgement of check, plan, start, order and release. */
export function judgeSale(checked: Checked): SaleJudgement {
  const reasons = [...ofStanding(checked), ...listReasons(checked)];
  return { answer: answerOf(reasons), reasons };
}

const ofStanding = ({ opened }: Checked): ToldReason[] =>
  opened.details.standing === 'trial'
    ? [
        {
          blocks: 'yes',
          says: saying('sale-trial', { formula: opened.formula.name, number: opened.revision.number }),
        },
      ]
    : [];

/** Those that it was checked for, as it was asked. */
export const marketsOf = ({ groups }: Checked): Market[] => groups.flatMap((group) => group.markets);

/** The same check, of one of its markets alone. */
export const inMarket = (checked: Checked, market: Market): Checked => ({
  ...checked,
  groups: checked.groups
    .filter((group) => group.markets.includes(market))
    .map((group) => ({
      ...group,
      markets: [market],
      answer: {
        ...group.answer,
        markets: group.answer.markets.filter((row) => row.market === market),
        reasons: group.answer.reasons.filter((row) => row.market === undefined || row.market === market),
      },
    })),
});
