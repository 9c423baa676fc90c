import type { z } from 'zod';
import { scaleTables } from '../../catalogue/index.ts';
import type { making, Saying } from '../../contract/index.ts';
import { type Exact, exact, roundPercent, toText } from '../../core/quantity/index.ts';
import {
  type BlendAhead,
  findScaleFor,
  findWaysToWeigh,
  type PremixInCarrier,
  type Scale,
  type WaysForOne,
} from '../../core/weighing/index.ts';
import type { ScaleRow } from '../../storage/index.ts';
import { briefGrams } from '../../words/index.ts';
import { saying } from '../saying.ts';
import { isHeld, scaleOf } from '../scale-error.ts';
import { factsOfParts } from './facts-of-parts.ts';
import type { LaidRow } from './lay-out-batch.ts';
import type { Recipe } from './read-recipe.ts';
import type { WishSize } from './size-wish.ts';

export type PlannedWays = z.output<typeof making.plannedWays>;
type SmallOne = PlannedWays['small'][number];

interface Laid {
  readonly recipe: Recipe;
  readonly rows: readonly LaidRow[];
  readonly size: WishSize;
}

/** What the weighings of a plan need of the workshop's scales; those that did not pass their check are left out. */
export function findPlannedWays(laid: Laid, rows: readonly ScaleRow[], bowlGrams: string): PlannedWays {
  const held = rows.filter(isHeld);
  const scales = rows.filter((row) => !isHeld(row)).map(scaleOf);
  const { batchGrams } = laid.size;
  const ways = findWaysToWeigh(
    { batchGrams, additions: laid.rows.map(additionOf(laid)), scales },
    scaleTables,
  );
  const context = { laid, bowlGrams, heldScales: held.map(scaleOf) };
  return {
    leftOut: held.map(({ id, name }) => ({ id, name })),
    smallestBatchGrams: ways.smallest && toText(ways.smallest.batchGrams),
    isSmallestInParts: ways.smallest?.isInParts ?? false,
    smallestTins: tinsOf(laid.size, ways.smallest?.batchGrams ?? null),
    small: ways.hard.flatMap((one) => smallOf(one, context)),
  };
}

/** Parts of a line that several lots give are weighed one by one. */
const additionOf =
  ({ recipe }: Laid) =>
  (row: LaidRow, position: number) => {
    const material = recipe.materials.get(row.itemId);
    return {
      key: String(position),
      grams: row.exactGrams,
      relativeTolerance: row.neededTolerance,
      isScent: row.itemKind === 'material' && material?.role === 'fragrance',
      isCarrier:
        row.itemKind === 'material' && material !== undefined && material.role === null && !row.isLimited,
    };
  };

/** Of a batch that is sized from tins: how many of each the smallest one fills. What fills none is told in grams alone. */
function tinsOf({ units, batchGrams }: WishSize, smallest: Exact | null): PlannedWays['smallestTins'] {
  if (smallest === null || batchGrams.isZero()) return [];
  return units
    .map(({ productId, possible }) => ({
      productId,
      units: smallest.times(possible).div(batchGrams).floor().toNumber(),
    }))
    .filter((tin) => tin.units > 0);
}

interface Around {
  readonly laid: Laid;
  readonly bowlGrams: string;
  readonly heldScales: readonly Scale[];
}

function smallOf(one: WaysForOne, around: Around): SmallOne[] {
  const position = Number(one.key);
  const row = around.laid.rows[position];
  if (!row) return [];
  const nameOf = (key: string): string => around.laid.rows[Number(key)]?.itemName ?? '';
  return [
    {
      position,
      itemName: row.itemName,
      says: sayNeed(row, one),
      ways: [
        ...(one.parts ? [saying('way-in-parts', factsOfParts(one.parts))] : []),
        sayFiner(row, one, around),
        ...(one.blend ? [sayBlend(one.blend, nameOf)] : []),
        ...sayLarger(one, around),
        ...(one.premix ? [sayPremix(one.premix, row, nameOf)] : []),
      ],
      blend: one.blend ? blendOf(one.blend, around.laid) : null,
    },
  ];
}

function sayNeed(row: LaidRow, { leastGrams, tooSmallScale }: WaysForOne): Saying {
  const percent = row.neededTolerance.times(100);
  const facts = {
    grams: briefText(exact(row.exactGrams)),
    tolerancePercent: toText(roundPercent(percent)),
    isNear: percent.lt(row.tolerancePercent) ? 'yes' : 'no',
  };
  if (tooSmallScale) {
    const holds = { scale: tooSmallScale.name, most: toText(exact(tooSmallScale.capacityGrams)) };
    return leastGrams === null
      ? saying('way-not-held', { ...facts, ...holds })
      : saying('way-between', { ...facts, ...holds, least: toText(leastGrams) });
  }
  return leastGrams === null
    ? saying('way-no-scale', facts)
    : saying('way-needs', { ...facts, least: toText(leastGrams) });
}

function sayFiner(row: LaidRow, { stepGrams, tooSmallScale }: WaysForOne, { heldScales }: Around): Saying {
  const held = findScaleFor(row.exactGrams, heldScales, row.neededTolerance, scaleTables);
  if (held) return saying('way-finer-held', { scale: held.name });
  const step = toText(stepGrams);
  const grams = briefText(exact(row.exactGrams));
  return tooSmallScale ? saying('way-finer-holding', { step, grams }) : saying('way-finer-step', { step });
}

function sayBlend(blend: BlendAhead, nameOf: (key: string) => string): Saying {
  const parts = blend.keys
    .map((key, place) => `${nameOf(key)} ${briefText(blend.grams[place] ?? exact(0))} g`)
    .join(', ');
  return saying('way-blend', {
    total: briefText(blend.totalGrams),
    batches: blend.batches,
    perBatch: briefText(blend.perBatchGrams),
    parts,
  });
}

function sayLarger({ largerBatchGrams }: WaysForOne, { bowlGrams }: Around): Saying[] {
  if (largerBatchGrams === null) return [];
  const isBeyond = bowlGrams !== '' && largerBatchGrams.gt(bowlGrams);
  const grams = toText(largerBatchGrams);
  return [
    isBeyond ? saying('way-larger-than-bowl', { grams, bowl: bowlGrams }) : saying('way-larger', { grams }),
  ];
}

const sayPremix = (premix: PremixInCarrier, row: LaidRow, nameOf: (key: string) => string): Saying =>
  saying('way-premix', {
    item: row.itemName,
    carrier: nameOf(premix.carrierKey),
    substance: briefText(premix.substanceGrams),
    carrierGrams: briefText(premix.carrierGrams),
    total: briefText(premix.premixTotalGrams),
    portion: briefText(premix.portionGrams),
    dose: briefText(exact(row.exactGrams)),
    brought: briefText(premix.broughtGrams),
  });

const blendOf = (blend: BlendAhead, { rows }: Laid): SmallOne['blend'] =>
  blend.keys.flatMap((key, place) => {
    const row = rows[Number(key)];
    const grams = blend.grams[place];
    return row && grams
      ? [{ itemKind: row.itemKind, itemId: row.itemId, grams: toText(grams.toDecimalPlaces(6)) }]
      : [];
  });

const briefText = (grams: Exact): string => briefGrams(toText(grams));
