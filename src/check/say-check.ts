import type { Market, Saying } from '../contract/index.ts';
import { saying } from '../contract/index.ts';
import type { SaleAnswer } from './answer-check.ts';
import type { Checked } from './checked.ts';
import { inMarket, judgeSale, marketsOf } from './judge-sale.ts';
import type { ToldReason } from './list-reasons.ts';

export interface MarketAnswer {
  readonly market: Market;
  readonly answer: SaleAnswer;
  readonly sentence: Saying;
}

const toMend = (reasons: readonly ToldReason[]): ToldReason[] =>
  reasons.filter((reason) => reason.blocks !== 'no');

/** Each market by itself. */
export const answerMarkets = (checked: Checked): MarketAnswer[] =>
  marketsOf(checked).map((market) => {
    const { answer, reasons } = judgeSale(inMarket(checked, market));
    return { market, answer, sentence: sayMarket(market, answer, toMend(reasons)) };
  });

export interface AnswerSomewhere {
  readonly market: Market;
  readonly answer: SaleAnswer;
  readonly because: Saying | null;
  readonly others: number;
  readonly questions: number;
}

/** Each market in a line: the answer, what stops it first and how much besides, how much is to be decided. */
export const answerEverywhere = (checked: Checked): AnswerSomewhere[] =>
  marketsOf(checked).map((market) => {
    const { answer, reasons } = judgeSale(inMarket(checked, market));
    const [first, ...others] = reasons.filter(({ blocks }) => blocks === 'yes');
    const questions = reasons.filter(({ blocks }) => blocks === 'until-decided').length;
    return { market, answer, because: first?.says ?? null, others: others.length, questions };
  });

function sayMarket(market: Market, answer: SaleAnswer, reasons: readonly ToldReason[]): Saying {
  const parameters = { market, n: reasons.length };
  if (answer === 'yes') return saying('check-market-yes', parameters);
  if (answer === 'decide') return saying('check-market-decide', parameters);
  return reasons.length === 1 && reasons[0]?.says.code === 'sale-report-missing'
    ? saying('check-market-no-report', parameters)
    : saying('check-market-no', parameters);
}

/** All markets in one sentence; where they differ, each answer with the markets that it holds for. */
export function sayAnswer(checked: Checked, markets: readonly MarketAnswer[]): Saying {
  const { opened } = checked;
  const { answer, reasons } = judgeSale(checked);
  const of = { formula: opened.formula.name, number: opened.revision.number };
  const withAnswer = (wanted: SaleAnswer): string =>
    markets
      .filter((row) => row.answer === wanted)
      .map((row) => row.market)
      .join(', ');
  const [yesMarkets, noMarkets, decideMarkets] = (['yes', 'no', 'decide'] as const).map(withAnswer);
  const all = markets.map((row) => row.market).join(', ');
  if (markets.every((row) => row.answer === answer)) {
    const parameters = { ...of, markets: all, n: toMend(reasons).length };
    if (answer === 'yes') return saying('check-yes', parameters);
    return answer === 'no' ? saying('check-no', parameters) : saying('check-decide', parameters);
  }
  const parameters = {
    ...of,
    yesMarkets: yesMarkets ?? '',
    noMarkets: noMarkets ?? '',
    decideMarkets: decideMarkets ?? '',
    hasNo: noMarkets !== '',
    hasDecide: decideMarkets !== '',
  };
  return yesMarkets === '' ? saying('check-mixed-no', parameters) : saying('check-mixed-yes', parameters);
}
