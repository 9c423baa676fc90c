import type { z } from 'zod';
import type { stock } from '../../src/contract/index.ts';
import type { TestWorkshop } from './open-test-workshop.ts';

type Details = z.input<typeof stock.materialDetails>;

/** An ingredient of which nothing is known that could decide anything. Invented, as are all its figures. */
export const plainIngredient = (more: Partial<Details> = {}): Details => ({
  kind: 'ingredient',
  name: 'Plain fat',
  supplier: 'Test Supplies',
  inciEu: 'Helianthus Annuus Seed Oil',
  inciUs: 'Helianthus Annuus (Sunflower) Seed Oil',
  botanical: '',
  cas: [],
  plantPart: null,
  process: null,
  role: null,
  isNano: false,
  densityGramsPerMl: '0.92',
  origins: [],
  constituents: [],
  constituentsAre: 'complete',
  constituentsPaper: 'Declaration 1, invented for the test',
  supplierMostPercent: null,
  supplierPaper: '',
  caution: '',
  packagingKind: null,
  brimMl: null,
  tareGrams: null,
  reorderBelow: null,
  packSize: '1000',
  packPrice: '10',
  leadDays: 3,
  ...more,
});

export const plainPackaging = (more: Partial<Details> = {}): Details => ({
  ...plainIngredient(),
  kind: 'packaging',
  name: '60 ml tin',
  inciEu: '',
  inciUs: '',
  densityGramsPerMl: null,
  origins: null,
  constituentsAre: null,
  constituentsPaper: '',
  packagingKind: 'tin',
  brimMl: '66',
  tareGrams: '11.4',
  packSize: '100',
  packPrice: '30',
  ...more,
});

/** Adds an ingredient and answers its id. */
export async function buildIngredient(bench: TestWorkshop, more: Partial<Details> = {}): Promise<string> {
  return (await bench.get('saveMaterial', { body: { details: plainIngredient(more) } })).id;
}

export async function buildPackaging(bench: TestWorkshop, more: Partial<Details> = {}): Promise<string> {
  return (await bench.get('saveMaterial', { body: { details: plainPackaging(more) } })).id;
}

export interface LotWish {
  /** Grams of an ingredient, pieces of packaging. */
  readonly quantity?: string;
  readonly bestBefore?: string | null;
  readonly supplierLot?: string | null;
  readonly paid?: string | null;
  readonly placeId?: string;
  /** false: held in quarantine. */
  readonly accept?: boolean;
}

/** Goods received, and accepted unless the wish says otherwise; answers the lot's id. */
export async function buildLot(bench: TestWorkshop, materialId: string, wish: LotWish = {}): Promise<string> {
  const { id } = await bench.get('receiveGoods', {
    body: {
      materialId,
      quantity: '1000',
      bestBefore: '2027-11-26',
      supplierLot: 'S-1',
      paid: '12.00',
      accept: true,
      ...wish,
    },
  });
  return id;
}
