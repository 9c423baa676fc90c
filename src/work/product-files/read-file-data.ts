import { judgeSale, type OpenedRevision } from '../../check/index.ts';
import { type orders, productFiles } from '../../contract/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import {
  findMaterials,
  findProduct,
  findProductFile,
  type LinkedAttachment,
  lastWrittenAt,
  listLinkedAttachments,
  listReleases,
  listRunCloses,
  listRunsOfProduct,
  listSold,
  type RunHead,
  type SignedClose,
  type SignedRelease,
  type SoldTins,
} from '../../storage/index.ts';
import { type ComplaintView, viewComplaints } from '../complaints/index.ts';
import type { Context } from '../context.ts';
import { listRevisionsInForce, type RevisionView, runCheck, viewRevisions } from '../formulas/index.ts';
import { localDate } from '../local-date.ts';
import { readProductDetails } from '../read-product-details.ts';
import { thingNotFound } from '../record.ts';
import { type MaterialDetails, viewMaterials } from '../stock/material-view.ts';
import { type WorkshopDetails, workshopDetails } from '../workshop-details.ts';
import { composeFileLabels, type FileLabel } from './file-labels.ts';
import { findReportsOf, type ReportsOfProduct } from './find-report-of.ts';
import { type LotUsed, readLotsUsed } from './lots-used.ts';

/** The composition of what is made now. */
export interface MadeNow {
  readonly revision: RevisionView;
  /** Of each base that it is made from, the revision in force. */
  readonly bases: readonly RevisionView[];
  readonly opened: OpenedRevision;
  readonly answer: 'yes' | 'no' | 'decide';
}

export interface FileData {
  readonly id: string;
  readonly product: orders.ProductDetails;
  readonly file: productFiles.ProductFileDetails;
  readonly version: number | null;
  /** null: its formula has nothing written down. */
  readonly made: MadeNow | null;
  readonly reports: ReportsOfProduct | null;
  readonly packaging: readonly MaterialDetails[];
  readonly complaints: readonly ComplaintView[];
  readonly sold: readonly SoldTins[];
  readonly runs: readonly RunHead[];
  readonly releases: ReadonlyMap<string, SignedRelease>;
  readonly closes: ReadonlyMap<string, SignedClose>;
  /** Lots of ingredients that tins of it were made of. */
  readonly lotsUsed: readonly LotUsed[];
  readonly files: readonly LinkedAttachment[];
  /** What its labels say, market by market; none where its formula has nothing written down. */
  readonly labels: readonly FileLabel[];
  readonly house: WorkshopDetails;
  readonly today: string;
  readonly asOf: string;
}

/** What is kept was read by an earlier edition of the contract: what came since has its default. */
export const readFileDetails = (text: string | undefined): productFiles.ProductFileDetails =>
  productFiles.productFileDetails.parse(text === undefined ? {} : JSON.parse(text));

export async function readFileData(context: Context, id: string): Promise<Result<FileData>> {
  const { db } = context.storage;
  const row = await findProduct(db, id);
  if (!row) return refused(thingNotFound('id', id));
  const product = readProductDetails(row.details);
  const kept = await findProductFile(db, id);
  const made = await readMadeNow(context, product);
  if (!made.ok) return made;
  const runs = await listRunsOfProduct(db, id);
  const runIds = runs.map((run) => run.id);
  const closes = await listRunCloses(db, runIds);
  const house = await workshopDetails(context);
  const today = localDate(context.machine.now(), house.timeZone);
  const asOf = (await lastWrittenAt(db)) ?? context.machine.now();
  return done({
    id,
    product,
    file: readFileDetails(kept?.details),
    version: kept?.version ?? null,
    made: made.value,
    reports:
      made.value &&
      (await findReportsOf(
        db,
        { product: { id, name: product.name }, opened: made.value.opened, today },
        product.markets,
      )),
    packaging: await readPackaging(context, product),
    complaints: await viewComplaints(context, [id]),
    sold: await listSold(db, [id]),
    runs,
    releases: new Map((await listReleases(db, runIds)).map((each) => [each.filling_run_id, each])),
    closes: new Map(closes.map((each) => [each.filling_run_id, each])),
    lotsUsed: await readLotsUsed(
      db,
      closes.flatMap(({ lot_id }) => lot_id ?? []),
    ),
    files: await listLinkedAttachments(db, 'product', id),
    labels: made.value
      ? await readLabels(context, id, product, made.value, localDate(asOf, house.timeZone))
      : [],
    house,
    today,
    asOf,
  });
}

async function readMadeNow(
  context: Context,
  { formulaId, markets }: orders.ProductDetails,
): Promise<Result<MadeNow | null>> {
  const { db } = context.storage;
  const heads = await listRevisionsInForce(db);
  const head = heads.find((one) => one.formula_id === formulaId);
  if (!head) return done(null);
  const checked = await runCheck(context, head.id, markets);
  if (!checked.ok) return checked;
  const { opened } = checked.value;
  const bases = heads.filter((one) => opened.baseIds.includes(one.formula_id));
  const [revision, ...views] = await viewRevisions(db, [head, ...bases]);
  if (!revision) return done(null);
  return done({ revision, bases: views, opened, answer: judgeSale(checked.value).answer });
}

const readLabels = (
  context: Context,
  productId: string,
  details: orders.ProductDetails,
  { revision }: MadeNow,
  madeOn: string,
): Promise<FileLabel[]> =>
  composeFileLabels(context, {
    productId,
    details,
    revisionId: revision.id,
    markets: details.markets,
    madeOn,
  });

async function readPackaging(
  { storage: { db } }: Context,
  { tinId, lidId, labelId }: orders.ProductDetails,
): Promise<MaterialDetails[]> {
  const ids = [tinId, lidId, labelId].filter((id) => id !== null);
  return (await viewMaterials(db, await findMaterials(db, ids))).map(({ details }) => details);
}
