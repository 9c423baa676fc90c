import { toText } from '../../../core/quantity/index.ts';
import { sayGrams, sayNumber, sayProblem, stepWords } from '../../../words/index.ts';
import type { Batch, Step } from './batch.ts';
import { type ExpectedDensity, expectDensity, loadsOf } from './read-air.ts';
import styles from './step.module.css';
import { bowlBefore } from './use-step-entry.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Step;
  /** The load that is whipped now, from 1. */
  readonly load: number;
}

const { loads: words } = stepWords;
const millilitres = (ml: { toNumber: () => number }): string => `${sayNumber(ml.toNumber(), 0)}\u00a0ml`;

/** How the bowl is shared out, by what it whips to: so many loads, so many grams each. */
export const LoadsCard = (props: Props) => (
  <section className={styles.box} aria-label={words.title}>
    <h2>{words.title}</h2>
    <Loads {...props} />
  </section>
);

function Loads({ batch, screen, load }: Props) {
  const plan = planLoads(batch, screen);
  if (typeof plan === 'string') return <p>{plan}</p>;
  const { loads, expected } = plan;
  const { bowlHoldsMl } = plan;
  const [only, ...others] = loads.loads;
  return (
    <>
      {only && others.length === 0 ? (
        <p>{words.one(sayGrams(toText(only)))}</p>
      ) : (
        <>
          <p>{words.many(loads.loads.length)}</p>
          <ol className={styles.loads}>
            {loads.loads
              .map((grams, index) => ({ grams, number: index + 1 }))
              .map(({ grams, number }) => (
                <li
                  key={number}
                  className={number === load ? styles.now : number < load ? styles.done : undefined}
                  aria-current={number === load ? 'step' : undefined}
                >
                  {sayGrams(toText(grams))}
                </li>
              ))}
          </ol>
        </>
      )}
      <p className="soft">
        {bowlHoldsMl === ''
          ? `${words.fillsOnly(millilitres(loads.largestMl))} ${words.noBowl}`
          : words.fills(millilitres(loads.largestMl), `${sayNumber(Number(bowlHoldsMl), 0)}\u00a0ml`)}{' '}
        {loads.boundBy === 'mass' && words.byMass} {sayFrom(screen, expected)}
      </p>
    </>
  );
}

/** How many loads there are to be, where that is known. */
export function countLoads(batch: Batch, screen: Step): number | null {
  const plan = planLoads(batch, screen);
  return typeof plan === 'string' ? null : plan.loads.loads.length;
}

function planLoads(batch: Batch, screen: Step) {
  const { air } = screen;
  if (!air) return words.unknown;
  const expected = expectDensity(air, screen.growsPercent);
  if (!expected) return words.unknown;
  const grams = bowlBefore(batch, screen);
  if (!grams.gt(0)) return words.nothing;
  const loads = loadsOf(air, grams, expected);
  if (!loads.ok) return loads.problems.map((each) => sayProblem(each).says).join(' ');
  return { loads: loads.value, expected, bowlHoldsMl: air.bowlHoldsMl };
}

function sayFrom({ air, growsPercent }: Step, expected: ExpectedDensity): string {
  const density = (grams: { toNumber: () => number }) => sayNumber(grams.toNumber(), 2);
  return expected.by === 'earlier'
    ? words.from.earlier(density(expected.gramsPerMl), air?.earlier?.batches ?? 0)
    : words.from.expected(growsPercent ?? '', density(expected.unwhipped), expected.isWeighed);
}
