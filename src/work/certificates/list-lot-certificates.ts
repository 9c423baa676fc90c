import type { z } from 'zod';
import { type CountingCertificate, listReplaced, usesOf } from '../../check/index.ts';
import type { certificates, Saying } from '../../contract/index.ts';
import { expandFormula } from '../../core/formula/index.ts';
import { done, refused } from '../../core/problem.ts';
import {
  type LotAtHand,
  listCertificatesOfLot,
  listFormulas,
  listLotsAtHand,
  type Reader,
  type SignedCertificate,
} from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { listShakenRuns } from '../filling/look-back.ts';
import { readFormulaLookup } from '../formulas/formula-lookup.ts';
import { listRevisionsInForce } from '../formulas/revisions-in-force.ts';
import { thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { ifraNotes } from './ifra-notes.ts';
import { joinRows, paperOf } from './read-counting.ts';

type View = z.output<typeof certificates.lotCertificate>;
type Counting = z.output<typeof certificates.countingFigures>;

export const listLotCertificates: UseCase<'listLotCertificates'> = async (
  context,
  { params: { id = '' } },
) => {
  const { db } = context.storage;
  const [lot] = await listLotsAtHand(db, { lotIds: [id] });
  if (!lot) return refused(thingNotFound('id', id));
  const rows = await listCertificatesOfLot(db, id);
  const counting = joinRows([...rows].reverse());
  const replaced = listReplaced(rows.map(paperOf));
  return done({
    sentence: sayStanding(
      lot,
      rows.filter((row) => !replaced.has(row.entry_id)),
      counting,
    ),
    certificates: rows.map((row) => viewCertificate(row, replaced)),
    counts: counting ? viewCounting(counting) : null,
    means: counting ? [...(await sayShaken(context, id)), ...(await sayUses(db, lot, counting))] : [],
  });
};

const viewCertificate = (row: SignedCertificate, replaced: ReadonlySet<string>): View => ({
  id: row.entry_id,
  reference: row.reference,
  datedOn: row.dated_on,
  details: JSON.parse(row.details) as View['details'],
  file: row.file_name === null ? null : { name: row.file_name, bytes: row.file_bytes ?? 0 },
  by: row.person_name,
  at: row.happened_at,
  isReplaced: replaced.has(row.entry_id),
});

function viewCounting({ reference, details }: CountingCertificate): Counting {
  const cited = <Figure extends { readonly paper?: string }>(figure: Figure) => ({
    ...figure,
    paper: figure.paper ?? reference,
  });
  const { constituents, isComplete, peroxide, ifra } = details;
  return {
    constituents: constituents.map(cited),
    isComplete,
    peroxide: peroxide && {
      mmolPerLitre: peroxide.mmolPerLitre,
      measuredOn: peroxide.measuredOn,
      paper: peroxide.paper ?? reference,
    },
    ifra: ifra.map(cited),
  };
}

/** By all papers that stand; the day is told of a single one. */
function sayStanding(
  { item_name: material }: LotAtHand,
  standing: readonly SignedCertificate[],
  counting: CountingCertificate | undefined,
): Saying {
  if (!counting) return saying('lot-without-certificate', { material });
  const { reference, details } = counting;
  const datedOn = standing.length === 1 ? (standing[0]?.dated_on ?? null) : null;
  const facts = {
    reference,
    n: standing.length,
    hasDate: datedOn !== null,
    datedOn: datedOn ?? '',
    material,
  };
  if (details.isComplete) return saying('lot-certificate-complete', facts);
  return details.constituents.length > 0
    ? saying('lot-certificate-partial', facts)
    : saying('lot-certificate-figures', facts);
}

/** Tins with this lot in them that were released before a paper told more. */
async function sayShaken(context: Context, lotId: string): Promise<Saying[]> {
  const shaken = (await listShakenRuns(context)).filter(({ toldAnew }) => toldAnew.includes(lotId));
  return shaken.map(({ tins, says }) =>
    saying('lot-shakes-tins', {
      tins: tins.number,
      units: tins.on_hand,
      reasons: says.map((each) => say(each)).join(' '),
    }),
  );
}

/** For every formula in force that the material goes into, by itself or in a base: whether the statement is kept to. */
async function sayUses(
  db: Reader,
  lot: LotAtHand,
  { reference, details }: CountingCertificate,
): Promise<Saying[]> {
  if (details.ifra.length === 0) return [];
  const names = new Map((await listFormulas(db)).map((row) => [row.id, row]));
  const lookup = await readFormulaLookup(db);
  return (await listRevisionsInForce(db)).flatMap(({ id, formula_id, details: text }) => {
    const expanded = expandFormula(id, lookup);
    const share = expanded.ok
      ? expanded.value.materials.find(({ materialId }) => materialId === lot.item_id)
      : undefined;
    const formula = names.get(formula_id);
    if (!share || !formula || formula.kind === 'base') return [];
    return ifraNotes(
      { reference, details, lotNumber: lot.number },
      usesOf(JSON.parse(text) as Parameters<typeof usesOf>[0]),
      { name: formula.name, percent: share.percent },
    );
  });
}
