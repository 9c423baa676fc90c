import type { Exact } from '../../../core/quantity/index.ts';
import { sayGrams, sayNumber, stepWords, tinsAirWords as words } from '../../../words/index.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { State, type StateKind } from '../../parts/state.tsx';
import { AirMends } from '../making/air-mends.tsx';
import { sayShare } from '../making/say-share.ts';
import steps from '../making/step.module.css';
import { TinPicture } from '../making/tin-picture.tsx';
import { readTinsAir, type TinsAir } from './read-tins-air.ts';
import type { Run } from './run.ts';

const KINDS: Readonly<Record<'more' | 'stop' | 'too-much', StateKind>> = {
  more: 'going',
  stop: 'ready',
  'too-much': 'stop',
};
const NOBODY = { full: '', room: '' };
const idsOf = (text: string): string[] => text.split(' ').filter((id) => id !== '');
const oneDecimal = (grams: Exact): string => sayGrams(sayNumber(Math.floor(grams.toNumber() * 10) / 10, 1));
const twoDecimals = (grams: Exact): string => sayGrams(sayNumber(grams.toNumber(), 2));

/** Whipped, the first tins tell: too much air or not, how many the bowl still fills, and the chance that all reach the label. */
export function TinsAirCard({ run }: { readonly run: Run }) {
  const { draft, set, forget } = useKeptDraft(`filling.${run.id}.air`, NOBODY);
  const says = readTinsAir(run, { full: idsOf(draft.full), room: idsOf(draft.room) });
  if (!says) return null;
  const { ask } = says;
  const answer = (name: keyof typeof NOBODY) => set(name)(`${draft[name]} ${ask?.entryId ?? ''}`.trim());
  return (
    <Card title={words.title}>
      <Verdict run={run} says={says} hasRoom={draft.room !== ''} />
      {ask && (
        <>
          <p>{words.ask(ask.number)}</p>
          <div className={steps.loadsRow}>
            <Button isBench onPress={() => answer('full')}>
              {words.full}
            </Button>
            <Button isBench onPress={() => answer('room')}>
              {words.room}
            </Button>
          </div>
        </>
      )}
      {says.verdict?.verdict === 'too-much' && <AirMends title={words.mendsNow} />}
      <Disclosure title={stepWords.air.working}>{() => <Working run={run} says={says} />}</Disclosure>
      {!ask && draft.full + draft.room !== '' && (
        <div>
          <Button isBench onPress={forget}>
            {words.said}
          </Button>
        </div>
      )}
    </Card>
  );
}

interface Props {
  readonly run: Run;
  readonly says: TinsAir;
}

function Verdict({ run, says, hasRoom }: Props & { readonly hasRoom: boolean }) {
  const { verdict, fills } = says;
  const short = run.summary.stillToFill - fills.count;
  return (
    <div className={verdict ? steps.bareTin : steps.lines}>
      {verdict && (
        <TinPicture
          fullness={verdict.fullness.toNumber()}
          headspaceShare={Number(run.air?.headspacePercent ?? 0) / 100}
          verdict={verdict.verdict}
        />
      )}
      <div className={steps.lines} role="status">
        {verdict ? (
          <>
            <p className={steps.verdict}>
              <State kind={KINDS[verdict.verdict]}>
                <strong>{words.verdicts[verdict.verdict]}</strong>
              </State>
            </p>
            <p>{words.by[says.by](oneDecimal(verdict.takesGrams), sayGrams(run.declaredGrams))}</p>
            {verdict.isShortOfAim && <p>{stepWords.air.shortOfAim(sayGrams(run.aimGrams))}</p>}
          </>
        ) : (
          <p>{hasRoom && !says.ask ? words.hasRoom : words.unknown}</p>
        )}
        <p>
          <strong>
            {words.fills(
              fills.count,
              twoDecimals(says.meanGrams),
              oneDecimal(fills.leftGrams),
              run.plannedSampleGrams === null ? null : sayGrams(run.plannedSampleGrams),
            )}
          </strong>{' '}
          {short > 0 && words.notEnough(short)}
        </p>
        {says.chance !== null && <p>{sayChance(says.chance)}</p>}
      </div>
    </div>
  );
}

function sayChance(chance: NonNullable<TinsAir['chance']>): string {
  if (chance === 'no-data') return words.chanceUnknown;
  if (chance === 'no-spread') return stepWords.air.chanceNoSpread;
  return words.chance(sayShare(chance.all), chance.tins);
}

function Working({ run, says }: Props) {
  const { chance, meanGrams, tins } = says;
  return (
    <>
      <p>{words.bowl}</p>
      <p>{words.mean(twoDecimals(meanGrams), tins)}</p>
      {chance !== null && typeof chance !== 'string' && (
        <>
          <p>{words.least(sayGrams(chance.leastGrams.toFixed()), run.fillBasis === 'minimum')}</p>
          <p>
            {stepWords.air.model(
              sayFrom(run, says),
              sayNumber(chance.standardDeviationGrams, 3),
              chance.degreesOfFreedom,
            )}
          </p>
          <p className="soft">{stepWords.air.limits}</p>
        </>
      )}
      {says.verdict && <p className="soft">{words.rule}</p>}
    </>
  );
}

function sayFrom(run: Run, { chance, tins }: TinsAir): string {
  const { air: airWords } = stepWords;
  const spread = run.air?.spread;
  const runs = spread ? airWords.fromRuns(spread.runs, spread.tins) : '';
  const now = words.fromNow(tins);
  if (chance === null || typeof chance === 'string' || chance.from === 'now') return now;
  return chance.from === 'runs' ? runs : airWords.fromBoth(runs, now);
}
