import { useState } from 'react';
import { awayWords, sayProblem } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { Button } from '../../parts/button.tsx';
import { Moment } from '../../parts/moment.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { AnswerClaim } from './answer-claim.tsx';
import styles from './claims.module.css';

export type Claim = AnswerOf<'listClaims'>[number];

const { claims: words } = awayWords;

/** One entry that came late and was refused: what was done, by whom and when, why it was refused, and its answer. */
export function ClaimLine({ claim }: { readonly claim: Claim }) {
  const [isAsked, setAsked] = useState(false);
  return (
    <div className={styles.claim}>
      <p>
        <strong>
          <Sentence saying={claim.what} />
        </strong>
        <br />
        <span className="soft">
          {words.by(claim.by, claim.device)}, <ToldMoment at={claim.at} /> · {words.cameIn}{' '}
          <Moment at={claim.recordedAt} />
        </span>
      </p>
      <Facts claim={claim} />
      {claim.answer ? (
        <p>
          <State kind="plain">{words[claim.answer.how](claim.answer.by, claim.answer.reason)}</State>{' '}
          <span className="soft small">
            <Moment at={claim.answer.at} />
          </span>
        </p>
      ) : (
        <>
          <Why claim={claim} />
          <div>
            <Button isBench onPress={() => setAsked(true)}>
              {words.answer}
            </Button>
          </div>
        </>
      )}
      {isAsked && <AnswerClaim claim={claim} onClose={() => setAsked(false)} />}
    </div>
  );
}

/** The tablet's own word, which may be no time at all. */
const ToldMoment = ({ at }: { readonly at: string }) =>
  Number.isNaN(Date.parse(at)) ? at : <Moment at={at} />;

const Facts = ({ claim: { facts } }: { readonly claim: Claim }) =>
  facts.length > 0 && (
    <ul className="soft small">
      {facts.map((fact) => (
        <li key={JSON.stringify(fact)}>
          <Sentence saying={fact} />
        </li>
      ))}
    </ul>
  );

const Why = ({ claim: { problems, mayEnter } }: { readonly claim: Claim }) => (
  <>
    <p>
      {words.why} {problems.map((problem) => sayProblem(problem).says).join(' ')}
    </p>
    {mayEnter?.instead && (
      <p>
        {words.stands} <Sentence saying={mayEnter.instead.what} />, <strong>{mayEnter.instead.by}</strong>,{' '}
        <Moment at={mayEnter.instead.at} />
      </p>
    )}
    {mayEnter === null && <p>{words.gone}</p>}
  </>
);
