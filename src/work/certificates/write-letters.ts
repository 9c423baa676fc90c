import { joinRequests, listRequests, type PaperRequest } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { expandFormula } from '../../core/formula/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import { buildLetter } from '../../print/layout/index.ts';
import { findMaterial, findRevision } from '../../storage/index.ts';
import { letterWords } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { readFormulaLookup } from '../formulas/formula-lookup.ts';
import { marketsToJudge, openSoldIn } from '../formulas/read-sold-in.ts';
import { listRevisionsInForce } from '../formulas/revisions-in-force.ts';
import { runCheck } from '../formulas/run-check.ts';
import { workshopToday } from '../local-date.ts';
import { painter } from '../painter.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';

interface Letter {
  readonly supplier: string;
  readonly materials: readonly string[];
  readonly asks: readonly { readonly material: string; readonly points: readonly string[] }[];
}

/** A letter to each supplier of what a formula is made of, by what is open and what hangs on memory. */
export const listFormulaLetters: UseCase<'listFormulaLetters'> = async (context, { params: { id = '' } }) => {
  const letters = await lettersOfRevision(context, id);
  return letters.ok ? done(await tellLetters(context, letters.value)) : letters;
};

/** The same of one material, by every formula in force that it goes into. */
export const listMaterialLetters: UseCase<'listMaterialLetters'> = async (
  context,
  { params: { id = '' } },
) => {
  const letters = await lettersOfMaterial(context, id);
  return letters.ok ? done(await tellLetters(context, letters.value)) : letters;
};

export const getFormulaLetterPdf: UseCase<'getFormulaLetterPdf'> = async (
  context,
  { params: { id = '' }, query },
) => paintLetter(context, await lettersOfRevision(context, id), query.supplier);

export const getMaterialLetterPdf: UseCase<'getMaterialLetterPdf'> = async (
  context,
  { params: { id = '' }, query },
) => paintLetter(context, await lettersOfMaterial(context, id), query.supplier);

async function lettersOfRevision(context: Context, id: string): Promise<Result<Letter[]>> {
  const asked = await requestsOf(context, [id]);
  return asked.ok ? done(groupBySupplier(asked.value.requests, asked.value.markets)) : asked;
}

async function lettersOfMaterial(context: Context, id: string): Promise<Result<Letter[]>> {
  const { db } = context.storage;
  const material = await findMaterial(db, id);
  if (!material) return refused(thingNotFound('id', id));
  const used: string[] = [];
  for (const revision of await listRevisionsInForce(db)) {
    const expanded = expandFormula(revision.id, await readFormulaLookup(db, { revisionId: revision.id }));
    if (expanded.ok && expanded.value.materials.some(({ materialId }) => materialId === id))
      used.push(revision.id);
  }
  const asked = await requestsOf(context, used);
  if (!asked.ok) return asked;
  const own = asked.value.requests.filter((request) => request.material.name === material.name);
  return done(groupBySupplier(own, asked.value.markets));
}

interface Asked {
  readonly requests: readonly PaperRequest[];
  readonly markets: readonly Market[];
}

async function requestsOf(context: Context, revisionIds: readonly string[]): Promise<Result<Asked>> {
  const soldIn = await openSoldIn(context.storage.db);
  const requests: PaperRequest[] = [];
  const markets = new Set<Market>();
  for (const id of revisionIds) {
    const revision = await findRevision(context.storage.db, id);
    if (!revision) return refused(thingNotFound('id', id));
    const judged = marketsToJudge(soldIn(revision.formula_id));
    for (const market of judged) markets.add(market);
    const checked = await runCheck(context, id, judged);
    if (!checked.ok) return checked;
    requests.push(...listRequests(checked.value));
  }
  return done({ requests: joinRequests(requests), markets: [...markets] });
}

function groupBySupplier(requests: readonly PaperRequest[], markets: readonly Market[]): Letter[] {
  const bySupplier = new Map<string, PaperRequest[]>();
  for (const request of requests) {
    const { supplier } = request.material;
    bySupplier.set(supplier, [...(bySupplier.get(supplier) ?? []), request]);
  }
  return [...bySupplier].map(([supplier, own]) => ({
    supplier,
    materials: own.map(({ material }) => material.name),
    asks: own.map((request) => ({ material: request.material.name, points: pointsOf(request, markets) })),
  }));
}

const pointsOf = (request: PaperRequest, markets: readonly Market[]): string[] => [
  ...(request.asksComposition ? [letterWords.composition(request.substances)] : []),
  ...(request.asksIdentity ? [letterWords.identity] : []),
  ...(request.ifraCategories.length > 0 ? [letterWords.ifra(request.ifraCategories)] : []),
  ...(request.asksPeroxide ? [letterWords.peroxide] : []),
  ...request.figures.map(letterWords.figure),
  ...(request.asksAllergens ? [letterWords.allergens(markets.join(', '))] : []),
  ...(request.asksOrigins ? [letterWords.origins] : []),
];

async function tellLetters(context: Context, letters: readonly Letter[]) {
  const { name } = await workshopDetails(context);
  return letters.map((letter) => ({
    supplier: letter.supplier,
    materials: [...letter.materials],
    text: [
      letterWords.opens(letter.materials),
      letterWords.asks,
      ...letter.asks.map(({ material, points }) =>
        [material, ...points.map((point) => `- ${point}`)].join('\n'),
      ),
      letterWords.closes,
      `${letterWords.thanks}\n${name}`,
    ].join('\n\n'),
  }));
}

async function paintLetter(context: Context, letters: Result<Letter[]>, supplier: string) {
  if (!letters.ok) return letters;
  const letter = letters.value.find((each) => each.supplier === supplier);
  if (!letter) return refused(problem('no-letter-to-supplier', 'supplier', { found: supplier }));
  const details = await workshopDetails(context);
  const { paintPaperPdf } = await painter();
  const bytes = await paintPaperPdf(
    buildLetter({
      supplier: supplier === '' ? letterWords.noSupplier : supplier,
      sender: [details.name, ...details.responsibleGb.address.split('\n')],
      date: await workshopToday(context),
      materials: letter.materials,
      asks: letter.asks,
      createdAt: context.machine.now(),
    }),
  );
  return bytes.ok ? done({ fileName: 'letter-to-supplier.pdf', bytes: bytes.value }) : bytes;
}
