import { expandFormula } from '../../core/formula/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import {
  type CertificateOfLot,
  type EntryRow,
  type LotAtHand,
  lastWrittenAt,
  listCertificates,
  listEntriesOf,
  listFormulas,
  listLotsAtHand,
  listMaterials,
  listProducts,
  listSold,
  type SoldTins,
} from '../../storage/index.ts';
import { type ComplaintView, viewComplaints } from '../complaints/index.ts';
import type { Context } from '../context.ts';
import { type KnownReport, readAllReports } from '../formulas/report-view.ts';
import { localDate } from '../local-date.ts';
import { thingNotFound } from '../record.ts';
import { type WorkshopDetails, workshopDetails } from '../workshop-details.ts';
import {
  lookupOf,
  REVISION_KINDS,
  revisionsAtSigning,
  type ToldRevision,
  toldRevisions,
} from './revisions-at-signing.ts';

export interface ChangedFormula {
  readonly id: string;
  readonly name: string;
  readonly before: ToldRevision;
  /** null: what stood there at the signing still stands. */
  readonly now: ToldRevision | null;
}

export interface ReportChanges {
  readonly report: KnownReport;
  readonly house: WorkshopDetails;
  readonly today: string;
  readonly asOf: string;
  readonly formulas: readonly ChangedFormula[];
  /** In what it covers now and not at the signing. */
  readonly newMaterials: readonly string[];
  readonly changedMaterials: readonly ChangedMaterial[];
  readonly lots: readonly LotAtHand[];
  /** The newest of each lot of its materials, where it was entered since. */
  readonly certificates: readonly CertificateOfLot[];
  readonly complaints: readonly ComplaintView[];
  readonly products: readonly { readonly id: string; readonly name: string }[];
  readonly sold: readonly SoldTins[];
  readonly itemNames: ReadonlyMap<string, string>;
}

type Told = Readonly<Record<string, unknown>>;

export interface ChangedMaterial {
  readonly name: string;
  readonly on: string;
  readonly before: Told;
  readonly after: Told;
}

/** All that happened since the report was signed to what it covers. */
export async function readChanges(context: Context, id: string): Promise<Result<ReportChanges>> {
  const { db } = context.storage;
  const report = (await readAllReports(db)).find(({ row }) => row.id === id);
  if (!report) return refused(thingNotFound('id', id));
  const house = await workshopDetails(context);
  const { signedOn, baseFormulaId, formulaIds } = report.details;
  const told = toldRevisions(await listEntriesOf(db, REVISION_KINDS), house.timeZone);
  const then = revisionsAtSigning(told, signedOn);
  const now = revisionsAtSigning(told, '9999-12-31');
  const covered = [...(baseFormulaId === null ? [] : [baseFormulaId]), ...formulaIds];
  const materialsThen = materialsIn(covered, then);
  const materialsNow = materialsIn(covered, now);
  const formulaNames = new Map((await listFormulas(db)).map((row) => [row.id, row.name]));
  const materialNames = new Map((await listMaterials(db)).map((row) => [row.id, row.name]));
  const since = (on: string) => on > signedOn;
  const products = await coveredProducts(context, report, covered);
  const productIds = products.map((product) => product.id);
  return done({
    report,
    house,
    today: localDate(context.machine.now(), house.timeZone),
    asOf: (await lastWrittenAt(db)) ?? context.machine.now(),
    formulas: covered.flatMap((formulaId) => changedFormula(formulaId, formulaNames, then, now)),
    newMaterials: [...materialsNow].filter((one) => !materialsThen.has(one)),
    changedMaterials: changesOfMaterials(
      await listEntriesOf(db, ['material-added', 'material-changed']),
      materialsNow,
      (entry) => localDate(entry.happened_at, house.timeZone),
      signedOn,
    ),
    lots: (await listLotsAtHand(db, { itemIds: [...materialsNow] })).filter((lot) => since(lot.since)),
    certificates: (await listCertificates(db)).filter(
      (row) => materialsNow.has(row.item_id) && since(localDate(row.happened_at, house.timeZone)),
    ),
    complaints: (await viewComplaints(context, productIds)).filter((row) => since(row.receivedOn)),
    products,
    sold: (await listSold(db, productIds)).filter((row) => since(localDate(row.sentAt, house.timeZone))),
    itemNames: new Map([...formulaNames, ...materialNames]),
  });
}

/** Materials of these formulas, their bases opened. */
function materialsIn(formulaIds: readonly string[], told: ReadonlyMap<string, ToldRevision>): Set<string> {
  const lookup = lookupOf(told);
  return new Set(
    formulaIds.flatMap((id) => {
      const expanded = expandFormula(id, lookup);
      return expanded.ok ? expanded.value.materials.map(({ materialId }) => materialId) : [];
    }),
  );
}

function changedFormula(
  id: string,
  names: ReadonlyMap<string, string>,
  then: ReadonlyMap<string, ToldRevision>,
  now: ReadonlyMap<string, ToldRevision>,
): ChangedFormula[] {
  const before = then.get(id);
  const after = now.get(id);
  if (!before || !after) return [];
  return [{ id, name: names.get(id) ?? '', before, now: before === after ? null : after }];
}

/** What was written of each material since, against what was written before. */
function changesOfMaterials(
  entries: readonly EntryRow[],
  wanted: ReadonlySet<string>,
  dayOf: (entry: EntryRow) => string,
  signedOn: string,
): ChangedMaterial[] {
  const last = new Map<string, Told>();
  const changes = new Map<string, ChangedMaterial>();
  for (const entry of entries) {
    const { subject_id: id } = entry;
    const told = JSON.parse(entry.payload) as Told;
    const before = changes.get(id)?.before ?? last.get(id);
    const on = dayOf(entry);
    if (wanted.has(id) && before && on > signedOn)
      changes.set(id, { name: String(told.name), on, before, after: told });
    last.set(id, told);
  }
  return [...changes.values()];
}

/** Those that it names, or every one that is filled from what it covers. */
async function coveredProducts(
  { storage: { db } }: Context,
  { details }: KnownReport,
  covered: readonly string[],
): Promise<{ id: string; name: string }[]> {
  const all = await listProducts(db);
  const own =
    details.productIds.length > 0
      ? all.filter((row) => details.productIds.includes(row.id))
      : all.filter((row) => covered.includes(row.formula_id));
  return own.map(({ id, name }) => ({ id, name }));
}
