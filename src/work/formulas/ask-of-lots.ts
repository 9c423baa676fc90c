import {
  type CertifiedLot,
  type LotQuestion,
  listLotQuestions,
  listLotUnknowns,
  type MarketUnknown,
} from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { readCounting } from '../certificates/read-counting.ts';
import type { Context } from '../context.ts';
import { readQuestion } from './run-check.ts';

/** Lots with a certificate of the materials that a formula comes to. */
async function readLots(context: Context, materialIds: ReadonlySet<string>): Promise<CertifiedLot[]> {
  const all = await readCounting(context.storage.db);
  return [...all.values()].filter(({ materialId }) => materialIds.has(materialId));
}

async function readAsked(context: Context, revisionId: string, markets: readonly Market[]) {
  const question = await readQuestion(context, revisionId, markets);
  if (!question.ok) return null;
  const { materials } = question.value.opened;
  return { question: question.value, lots: await readLots(context, new Set(materials.keys())) };
}

/** What only certificates of lots raise about a formula: the one place where it is decided. */
export async function askOfLots(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
): Promise<LotQuestion[]> {
  const asked = await readAsked(context, revisionId, markets);
  return asked ? listLotQuestions(asked.question, asked.lots) : [];
}

export async function unknownsOfLots(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
): Promise<MarketUnknown[]> {
  const asked = await readAsked(context, revisionId, markets);
  return asked ? listLotUnknowns(asked.question, asked.lots) : [];
}
