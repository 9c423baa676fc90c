import { aimWords, sayMoney } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { TextLink } from '../../parts/text-link.tsx';

export type Advice = AnswerOf<'adviseAim'>;

/** What to aim at and why, what it gives away, and what a little less would save and cost. */
export function AimAdvice({ advice, wanted }: { readonly advice: Advice; readonly wanted: number }) {
  const money = (amount: string | null) => (amount === null ? null : sayMoney(amount, advice.currency));
  const { learnt, lower } = advice;
  return (
    <>
      <p>
        <strong>{aimWords.says(advice.aimGrams)}</strong>. {aimWords.decidedBy[advice.decidedBy]}{' '}
        {aimWords.errors(advice.errorGrams)}
      </p>
      <p>
        {aimWords.giveaway(advice.giveawayGrams, money(advice.giveawayMoney))};{' '}
        {aimWords.run(advice.runGiveawayGrams, money(advice.runGiveawayMoney), wanted)}.{' '}
        {advice.giveawayMoney === null && <span className="soft">{aimWords.noPrice}</span>}
      </p>
      {lower && (
        <p>{aimWords.lower(lower.byGrams, lower.savesGrams, money(lower.savesMoney), lower.shortOneIn)}</p>
      )}
      {learnt && (
        <p className="soft">
          {aimWords.learnt(learnt.spreadGrams, learnt.tins, learnt.runs.length)} {aimWords.from[learnt.from]}{' '}
          {learnt.runs.map((run, index) => (
            <span key={run.id}>
              {index > 0 && ', '}
              <TextLink to={`/filling/${run.id}`}>{run.number}</TextLink>
            </span>
          ))}
          .
        </p>
      )}
      {advice.productAimGrams !== null && <p>{aimWords.product(advice.productAimGrams)}</p>}
    </>
  );
}
