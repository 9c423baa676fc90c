import type { making } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { exact, gramsFromMicrograms } from '../../core/quantity/index.ts';
import { askAboutReading, type ReadingQuestion } from '../../core/weighing/index.ts';
import { giveUp, type SignedAddition } from '../../storage/index.ts';
import { sayProblem } from '../../words/index.ts';
import { askedUg, bandVerdict, type Weighing } from './weighing-entry.ts';

/**
 * What a careful colleague would ask before a reading counts: ten times off, another unit, the vessel's tare in it, the
 * last figure once more. Whoever says that it is so goes on; what was asked stays with the weighing.
 */
export function refuseDoubtful(weighing: Weighing): making.ReadingNote | null {
  const { body } = weighing;
  refuseWrongNet(body);
  const question = findQuestion(weighing);
  if (question !== null && !body.isReadingSure) {
    giveUp(
      problem('reading-doubtful', 'actualGrams', {
        ...(question.found !== undefined && { found: question.found }),
        ...(question.allowed !== undefined && { allowed: question.allowed }),
        parameters: { ...question.parameters, kind: question.code, question: sayProblem(question).says },
      }),
    );
  }
  const asked = question === null ? body.readingWas : { kind: question.code, wasGrams: null };
  return asked === null && body.vessel === null ? null : { asked, vessel: body.vessel };
}

/** Net is gross less tare, or one of the three is wrong. */
export function refuseWrongNet({
  vessel,
  actualGrams,
}: Pick<Weighing['body'], 'vessel' | 'actualGrams'>): void {
  if (vessel === null) return;
  const net = exact(vessel.grossGrams).minus(vessel.tareGrams);
  if (net.eq(actualGrams)) return;
  giveUp(problem('net-not-gross-less-tare', 'actualGrams', { found: actualGrams, allowed: net.toFixed() }));
}

function findQuestion(weighing: Weighing): ReadingQuestion | null {
  const { standing, body } = weighing;
  const scale = weighing.scales.find((row) => row.id === body.scaleId);
  return askAboutReading({
    grams: body.actualGrams,
    // Of a part nobody knows how much it was to be.
    targetGrams: body.isPart ? null : gramsFromMicrograms(askedUg(weighing)),
    grossGrams: body.vessel?.grossGrams,
    readabilityGrams: scale?.readability_grams,
    capacityGrams: scale?.capacity_grams,
    lastGrams: lastAlike(standing, weighing),
    tareGrams: body.vessel ? null : lastTare(standing),
  });
}

/** The figure of the weighing before: of the same position, or where it is not what is wanted here. */
function lastAlike(standing: readonly SignedAddition[], weighing: Weighing): string | null {
  const last = standing.at(-1);
  if (!last) return null;
  const isSamePlace = last.position === weighing.line.position;
  if (!isSamePlace && bandVerdict(weighing) === 'inside') return null;
  return gramsFromMicrograms(last.actual_ug).toFixed();
}

/** What the vessel weighed that was used last in this batch. */
function lastTare(standing: readonly SignedAddition[]): string | null {
  const notes = standing.flatMap(({ reading }) =>
    reading === null ? [] : [JSON.parse(reading) as making.ReadingNote],
  );
  return notes.findLast(({ vessel }) => vessel !== null)?.vessel?.tareGrams ?? null;
}
