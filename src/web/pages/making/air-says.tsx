import { toText } from '../../../core/quantity/index.ts';
import { sayGrams, sayNumber, stepWords } from '../../../words/index.ts';
import { Disclosure } from '../../parts/disclosure.tsx';
import { State, type StateKind } from '../../parts/state.tsx';
import { AirMends } from './air-mends.tsx';
import { type Chance, type TinAir, worstVerdict } from './read-air.ts';
import { sayShare } from './say-share.ts';
import styles from './step.module.css';
import { TinPicture } from './tin-picture.tsx';

interface Props {
  readonly found: readonly TinAir[];
  /** So many cups and first tins of this bowl. */
  readonly cups: number;
  /** The last cup, to tell what it must not fall below. */
  readonly cup: { readonly cupMl: number; readonly tareGrams: number } | undefined;
}

const { air: words } = stepWords;
const KINDS: Readonly<Record<TinAir['verdict']['verdict'], StateKind>> = {
  more: 'going',
  stop: 'ready',
  'too-much': 'stop',
};

/** More air, stop, or too much: tin by tin, with the figures, and what helps where it is too much. */
export function AirSays({ found, cups, cup }: Props) {
  const worst = worstVerdict(found);
  if (!worst) return <p className="soft">{words.needsCup}</p>;
  return (
    <section className={styles.air} aria-label={words.title}>
      <p className={styles.verdict} role="status">
        <State kind={KINDS[worst]}>
          <strong>{words[worst]}</strong>
        </State>
      </p>
      {found.map((each) => (
        <TinSays key={each.tin.productId} says={each} cups={cups} cup={cup} isOne={found.length === 1} />
      ))}
      {worst === 'too-much' && <AirMends title={words.mend} />}
    </section>
  );
}

interface TinProps extends Omit<Props, 'found'> {
  readonly says: TinAir;
  readonly isOne: boolean;
}

const oneDecimal = (grams: { toNumber: () => number }): string =>
  sayGrams(sayNumber(Math.floor(grams.toNumber() * 10) / 10, 1));

function TinSays({ says, cups, cup, isOne }: TinProps) {
  const { tin, verdict, fills, chance } = says;
  const aim = sayGrams(tin.aimGrams);
  return (
    <div className={styles.tin}>
      <TinPicture
        fullness={verdict.fullness.toNumber()}
        headspaceShare={Number(tin.headspacePercent) / 100}
        verdict={verdict.verdict}
      />
      <div className={styles.lines}>
        {!isOne && (
          <p>
            <State kind={KINDS[verdict.verdict]}>{words[verdict.verdict]}</State>
          </p>
        )}
        <p>
          <strong>
            {words.takes(tin.productName, oneDecimal(verdict.takesGrams), sayGrams(tin.declaredGrams))}
          </strong>
        </p>
        <p>{words.full(aim, sayNumber(verdict.fullness.toNumber() * 100, 0))}</p>
        {verdict.isShortOfAim && <p>{words.shortOfAim(aim)}</p>}
        {verdict.takesAfterNext && <p>{words.next(oneDecimal(verdict.takesAfterNext))}</p>}
        {cup && verdict.verdict === 'more' && (
          <p>{words.stopAt(stopAt(verdict.leastGramsPerMl.toNumber(), cup))}</p>
        )}
        {verdict.overrunPercent && (
          <p>
            {words.grown(sayNumber(verdict.overrunPercent.toNumber(), 0))}{' '}
            {verdict.largestOverrunPercent &&
              words.largest(sayNumber(verdict.largestOverrunPercent.toNumber(), 0))}
          </p>
        )}
        {fills &&
          (tin.planned === null ? (
            <p>{words.fills(fills.count, tin.productName, oneDecimal(fills.leftGrams))}</p>
          ) : (
            <p>{words.fillsPlanned(fills.count, tin.planned, tin.productName)}</p>
          ))}
        {verdict.verdict !== 'more' && <p>{sayChance(chance)}</p>}
        <Disclosure isBench title={words.working}>
          {() => (
            <>
              <p>{words.density(toText(verdict.meanGramsPerMl.toDecimalPlaces(4)), cups)}</p>
              <p>{words.rule}</p>
              {verdict.verdict !== 'more' && typeof chance !== 'string' && (
                <Model chance={chance} says={says} />
              )}
            </>
          )}
        </Disclosure>
      </div>
    </div>
  );
}

/** The scale with the same cup on it, taken up to a tenth of a gram. */
const stopAt = (leastGramsPerMl: number, cup: NonNullable<Props['cup']>): string =>
  sayGrams(sayNumber(Math.ceil((leastGramsPerMl * cup.cupMl + cup.tareGrams) * 10 - 1e-9) / 10, 1));

function sayChance(chance: TinAir['chance']): string {
  if (chance === 'no-data') return words.chanceUnknown;
  if (chance === 'no-spread') return words.chanceNoSpread;
  return words.chance(sayShare(chance.all), chance.tins, oneDecimal(chance.expectedGrams));
}

function Model({ chance, says }: { readonly chance: Chance; readonly says: TinAir }) {
  const { spread } = says.tin;
  const runs = spread ? words.fromRuns(spread.runs, spread.tins) : '';
  const now = words.fromNow(chance.meanOf);
  const from = chance.from === 'both' ? words.fromBoth(runs, now) : chance.from === 'runs' ? runs : now;
  return (
    <>
      <p>{words.model(from, sayNumber(chance.standardDeviationGrams, 3), chance.degreesOfFreedom)}</p>
      <p>{words.mean(oneDecimal(chance.expectedGrams), chance.meanOf)}</p>
      <p className="soft">{words.limits}</p>
    </>
  );
}
