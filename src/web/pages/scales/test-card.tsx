import { roundToStep, toText } from '../../../core/quantity/index.ts';
import { findSmallestWeight } from '../../../core/weighing/index.ts';
import { sayGrams, sayInstant, scaleWords } from '../../../words/index.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Figures } from '../../parts/figures.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { ShowWorking } from '../../parts/show-working.tsx';
import { roundDeviation, sayRepeats } from './say-repeats.ts';
import type { Scale, ScaleTest } from './scale.ts';
import styles from './scales.module.css';

const { test: words } = scaleWords;
/** Within how much an addition is wanted, in percent: what limits, scents and butters ask (common practice, no source). */
const PERCENTS = [1, 2, 5] as const;

const leastOf = ({ readabilityGrams, repeatability }: Scale, percent: number): string => {
  const repeating = { readabilityGrams, repeatabilityGrams: repeatability?.grams ?? 0 };
  const { smallestWeightGrams } = findSmallestWeight(repeating, percent / 100);
  return toText(roundToStep(smallestWeightGrams, readabilityGrams, 'up'));
};

/** How well a scale repeats, and what it can weigh for that. */
export function TestCard({ scale, tests }: { readonly scale: Scale; readonly tests: readonly ScaleTest[] }) {
  const zone = useTimeZone();
  const [latest, ...earlier] = tests;
  return (
    <Card title={words.title} anchor="test">
      <p>{words.leastSays(sayGrams(leastOf(scale, 1)), sayGrams(leastOf(scale, 2)))}</p>
      <Figures>
        {PERCENTS.map((percent) => (
          <Figure key={percent} label={words.leastFor(percent)} value={leastOf(scale, percent)} unit="g" />
        ))}
      </Figures>
      {latest ? <Latest test={latest} /> : <p>{words.none}</p>}
      {scale.repeatability?.from === 'typed' && <p className="soft">{sayRepeats(scale, zone)}</p>}
      <div className={styles.noPaper}>
        <LinkButton isAct={!latest} isBench to={`/scales/${scale.id}/test`}>
          {latest ? words.again : words.begin}
        </LinkButton>
      </div>
      {earlier.length > 0 && (
        <Disclosure title={words.earlier}>
          {() => earlier.map((test) => <Latest key={test.entryId} test={test} />)}
        </Disclosure>
      )}
      <ShowWorking
        title={words.leastFor(1)}
        calculation="smallest-weight"
        input={{
          readabilityGrams: Number(scale.readabilityGrams),
          ...(scale.repeatability && { repeatabilityGrams: Number(scale.repeatability.grams) }),
          relativeTolerance: 0.01,
        }}
      />
    </Card>
  );
}

function Latest({ test }: { readonly test: ScaleTest }) {
  const zone = useTimeZone();
  const isAllSame = Number(test.deviationGrams) === 0;
  return (
    <div className={styles.facts}>
      <p>
        {isAllSame
          ? words.allSame(sayGrams(test.readabilityGrams))
          : words.says(sayGrams(roundDeviation(test.deviationGrams)))}{' '}
        {test.isUsed ? words.used : words.notUsed}
      </p>
      <p className="soft">
        {words.by(test.by, sayInstant(test.at, zone))}. {words.weight} {sayGrams(test.weightGrams)},{' '}
        {words.mean} {sayGrams(test.meanGrams)}.
      </p>
      <p className="soft small">
        {words.readings}: {test.readings.join(' · ')} g
      </p>
    </div>
  );
}
