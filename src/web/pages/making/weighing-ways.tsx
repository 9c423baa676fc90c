import { makingWords, sayGrams, scaleWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { Disclosure } from '../../parts/disclosure.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { BlendAhead } from './blend-ahead.tsx';
import styles from './plan.module.css';

type Plan = AnswerOf<'planBatch'>;
const { ways: words } = scaleWords;

/** Whether this workshop's scales can weigh the batch: one sentence, and what may be done, folded. */
export function WeighingWays({ plan }: { readonly plan: Plan }) {
  const { leftOut, small, smallestBatchGrams, isSmallestInParts } = plan.weighing;
  return (
    <>
      {leftOut.map(({ id, name }) => (
        <p key={id}>
          <State kind="stop">{words.leftOut(name)}</State>{' '}
          <TextLink to={`/scales/${id}`}>{words.toCheck}</TextLink>
        </p>
      ))}
      <p>
        {small.length > 0 && <State kind="watch">{words.small(small.length)}</State>}{' '}
        {smallestBatchGrams === null
          ? words.noSmallest
          : words.smallest(sayGrams(smallestBatchGrams), tinsInWords(plan), isSmallestInParts)}
      </p>
      {small.length > 0 && (
        <Disclosure title={words.what}>
          {() => (
            <ul className={styles.ways}>
              {small.map((one) => (
                <li key={one.position}>
                  <strong>{one.itemName}</strong>: <Sentence saying={one.says} />
                  <ol className={styles.numbered}>
                    {one.ways.map((way) => (
                      <li key={way.code}>
                        <Sentence saying={way} />
                        {way.code === 'way-blend' && one.blend && (
                          <BlendAhead plan={plan} lines={one.blend} />
                        )}
                      </li>
                    ))}
                  </ol>
                </li>
              ))}
            </ul>
          )}
        </Disclosure>
      )}
    </>
  );
}

const tinsInWords = ({ tins, weighing }: Plan): string =>
  weighing.smallestTins
    .map(({ productId, units }) =>
      makingWords.possible(units, units, tins.find((tin) => tin.productId === productId)?.productName ?? ''),
    )
    .join(', ');
