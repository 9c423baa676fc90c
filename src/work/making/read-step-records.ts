import { judgeCup } from '../../core/filling/index.ts';
import { toText } from '../../core/quantity/index.ts';
import type { BatchRecord } from '../../print/layout/index.ts';
import { findAttachment, type Reader } from '../../storage/index.ts';
import { stepWords } from '../../words/index.ts';
import type { BatchView } from './batch-view.ts';

type Step = Extract<BatchView['screens'][number], { kind: 'step' }>;
type Records = Pick<BatchRecord, 'rounds' | 'yields' | 'photos'>;

/** Rounds of whipping, what each stage left behind, and the photographs, as the batch record shows them. */
export async function readStepRecords(
  db: Reader,
  { screens, yields }: BatchView,
  moment: (instant: string) => string,
): Promise<Records> {
  const steps = screens.filter((screen): screen is Step => screen.kind === 'step');
  return {
    rounds: steps.flatMap(({ whipped }) => whipped).map((round) => roundOf(round, moment)),
    yields: yields.map(({ name, expectedGrams, foundGrams, lossGrams, lossPercent }) => ({
      stage: name,
      expectedGrams,
      foundGrams,
      lossGrams,
      lossPercent,
    })),
    photos: await readPhotos(db, steps, moment),
  };
}

const roundOf = (round: Step['whipped'][number], moment: (instant: string) => string) => ({
  round: stepWords.print.round(round.load, round.round),
  minutes: round.minutes ?? '',
  looked: [stepWords.looks[round.looked], round.celsius && `${round.celsius} °C`, round.remark]
    .filter(Boolean)
    .join(', '),
  cups: round.cups.flatMap(densityText).join(', '),
  when: moment(round.at),
  who: round.by,
});

function densityText(cup: Step['whipped'][number]['cups'][number]): string[] {
  const judged = judgeCup(cup);
  return judged.ok ? [toText(judged.value.densityGramsPerMl.toDecimalPlaces(3))] : [];
}

async function readPhotos(
  db: Reader,
  steps: readonly Step[],
  moment: (instant: string) => string,
): Promise<Records['photos']> {
  const photos = steps.flatMap(({ what, photos: taken }) => taken.map((photo) => ({ ...photo, what })));
  const read: { name: string; bytes: Uint8Array }[] = [];
  for (const photo of photos) {
    const file = await findAttachment(db, photo.id);
    if (!file) continue;
    const name = stepWords.print.photoOf(photo.what, photo.caption, moment(photo.at), photo.by);
    read.push({ name, bytes: new Uint8Array(file.bytes) });
  }
  return read;
}
