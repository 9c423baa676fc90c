import type { ReadingAndWriting } from './bench-hand.ts';
import { LAST_CUP, whip } from './whip.ts';

export interface Scales {
  readonly bench: string;
  readonly middle: string;
  readonly small: string;
}

const latestRevision = async (hand: ReadingAndWriting, formulaId: string): Promise<string> => {
  const { latest } = await hand.read('getFormula', { params: { id: formulaId } });
  if (!latest) throw new Error('the recipe was written');
  return latest.id;
};

/** How a hand pours: so far off the target, as a share of the way to the edge of its band; 0 is on target. */
export interface Pouring {
  readonly item: string;
  readonly share: number;
}

/** Weighs everything in, on target but for one line, and ticks each step. */
export async function makeAll(hand: ReadingAndWriting, batchId: string, poured?: Pouring): Promise<void> {
  const batch = await hand.read('getBatch', { params: { id: batchId } });
  for (const screen of batch.screens) {
    if (screen.done) continue;
    if (screen.kind === 'addition') {
      await hand.write(
        'recordAddition',
        {
          position: screen.position,
          lotId: screen.lotId ?? '',
          scaleId: screen.scaleId,
          actualGrams: screen.itemName === poured?.item ? pour(screen, poured) : screen.targetGrams,
        },
        { id: batchId },
      );
    } else if (screen.stepKind === 'whip') {
      await whip(hand, batchId, screen.position);
    } else {
      const weighed = screen.stepKind === 'cup' ? LAST_CUP : null;
      await hand.write(
        'recordStep',
        {
          position: screen.position,
          celsius: screen.leastCelsius,
          minutes: screen.minutes,
          remark: '',
          weighed,
        },
        { id: batchId },
      );
    }
  }
}

interface Band {
  readonly targetGrams: string;
  readonly lowGrams: string;
  readonly highGrams: string;
}

/** Within its band, and to the last digit that its target has: what the scale shows. */
function pour({ targetGrams, lowGrams, highGrams }: Band, { share }: Pouring): string {
  const digits = targetGrams.split('.')[1]?.length ?? 0;
  const edge = Number(share < 0 ? lowGrams : highGrams);
  return (Number(targetGrams) + Math.abs(share) * (edge - Number(targetGrams))).toFixed(digits);
}

/** Too much of the first thing is in: entered as it is, and the rest is made larger in one tap. */
async function overpour(hand: ReadingAndWriting, batchId: string): Promise<void> {
  const batch = await hand.read('getBatch', { params: { id: batchId } });
  const first = batch.screens.find((screen) => screen.kind === 'addition');
  if (first?.kind !== 'addition') throw new Error('something is weighed in');
  const { position, lotId, scaleId, targetGrams } = first;
  const actualGrams = (Number(targetGrams) * 1.04).toFixed(targetGrams.split('.')[1]?.length ?? 0);
  const deviation = { what: 'Poured too much', why: 'A lump of it slid out of the tub' };
  const params = { id: batchId };
  await hand.write(
    'recordAddition',
    { position, lotId: lotId ?? '', scaleId, actualGrams, deviation },
    params,
  );
  const { upon } = await hand.read('offerResize', { params, body: { position, moreGrams: '0' } });
  await hand.write('resizeBatch', { position, upon, reason: 'So that the percentages hold' }, params);
}

/** How a base was made differently from the sheet. */
export interface BaseStory {
  readonly poured?: Pouring;
  readonly isOverpoured?: boolean;
}

/** A base batch; `lossGrams` stays in the pan. Its lot waits until somebody says that it is firm. */
export async function makeBase(
  hand: ReadingAndWriting,
  formulaId: string,
  grams: number,
  lossGrams: number,
  { poured, isOverpoured = false }: BaseStory = {},
): Promise<string> {
  const revisionId = await latestRevision(hand, formulaId);
  const batch = await hand.write('startBatch', {
    wish: { revisionId, purpose: 'sale', markets: ['GB', 'NI'], size: { by: 'grams', grams: String(grams) } },
  });
  if (isOverpoured) await overpour(hand, batch.id);
  await makeAll(hand, batch.id, poured);
  const { plannedGrams } = await hand.read('getBatch', { params: { id: batch.id } });
  const yieldGrams = (Number(plannedGrams) - lossGrams).toFixed(1);
  const made = await hand.write('finishBatch', { yieldGrams }, { id: batch.id });
  if (made.lotId === null) throw new Error('a finished batch has its lot');
  return made.lotId;
}

export interface Filling {
  readonly formulaId: string;
  readonly productId: string;
  readonly units: number;
  readonly scaleId: string;
  readonly tareGrams: string;
  /** How far each tin lies above the aim, in hundredths of a gram, in turn. */
  readonly over: readonly number[];
}

/** A batch sized for its tins, made and filled tin by tin; the run is closed and waits for its release. */
export async function makeAndFill(hand: ReadingAndWriting, filling: Filling): Promise<string> {
  const revisionId = await latestRevision(hand, filling.formulaId);
  const batch = await hand.write('startBatch', {
    wish: {
      revisionId,
      purpose: 'sale',
      markets: ['GB', 'NI'],
      size: {
        by: 'tins',
        tins: [{ productId: filling.productId, units: filling.units }],
        retained: { keep: true, grams: '10' },
      },
    },
  });
  await makeAll(hand, batch.id);
  const made = await hand.write(
    'finishBatch',
    { yieldGrams: (Number(batch.plannedGrams) - 1).toFixed(2) },
    { id: batch.id },
  );
  const run = await hand.write('startRun', {
    batchId: made.id,
    productId: filling.productId,
    wanted: filling.units,
    scaleId: filling.scaleId,
    tareGrams: filling.tareGrams,
  });
  await hand.write('prepareRun', { word: { kind: 'area', isClear: true } }, { id: run.id });
  await hand.write('prepareRun', { word: { kind: 'containers', method: 'washed-dried' } }, { id: run.id });
  for (let tin = 0; tin < filling.units; tin += 1) {
    const over = (filling.over[tin % filling.over.length] ?? 0) / 100;
    const grossGrams = (Number(run.aimGrams) + Number(filling.tareGrams) + over).toFixed(2);
    await hand.write('recordFill', { grossGrams, tareGrams: null }, { id: run.id });
  }
  await hand.write(
    'closeRun',
    { retained: { keep: true, grams: '10' }, leftGrams: '0', spoiltTins: 0, spoiltLids: 0, spoiltLabels: 1 },
    { id: run.id },
  );
  return run.id;
}
