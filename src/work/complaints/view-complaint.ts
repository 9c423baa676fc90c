import type { z } from 'zod';
import type { complaints, Saying } from '../../contract/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import { listTellings, type Telling } from '../../core/product-file/index.ts';
import {
  findComplaint,
  listComplaints,
  listComplaintWords,
  type SignedComplaint,
  type SignedComplaintWord,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { readProductDetails } from '../read-product-details.ts';
import { thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import { tellingRules } from './telling-rules.ts';

export type ComplaintView = z.output<typeof complaints.complaintView>;
type Judged = z.output<typeof complaints.judgedAnew>;

export async function viewComplaint(context: Context, id: string): Promise<Result<ComplaintView>> {
  const row = await findComplaint(context.storage.db, id);
  const [view] = row ? await viewAll(context, [row]) : [];
  return view ? done(view) : refused(thingNotFound('id', id));
}

/** Of these products, or of all; the newest first. */
export async function viewComplaints(
  context: Context,
  productIds?: readonly string[],
): Promise<ComplaintView[]> {
  return viewAll(context, await listComplaints(context.storage.db, productIds));
}

async function viewAll(context: Context, rows: readonly SignedComplaint[]): Promise<ComplaintView[]> {
  const words = await listComplaintWords(
    context.storage.db,
    rows.map((row) => row.id),
  );
  const today = await workshopToday(context);
  return rows.map((row) =>
    viewOne(
      row,
      words.filter((word) => word.complaint_id === row.id),
      today,
    ),
  );
}

function viewOne(row: SignedComplaint, said: readonly SignedComplaintWord[], today: string): ComplaintView {
  const details = JSON.parse(row.details) as complaints.ComplaintDetails;
  const words = said.map(viewWord);
  const { effect, marks } = words.findLast((word) => word.judged !== null)?.judged ?? details;
  const state = words.at(-1)?.state ?? 'open';
  const { markets } = readProductDetails(row.product_details);
  const rules = effect === 'serious' ? tellingRules(details.happenedIn, markets) : [];
  return {
    id: row.id,
    productId: row.product_id,
    productName: row.product_name,
    runId: row.filling_run_id,
    batchNumber: row.run_number,
    lotId: row.lot_id,
    receivedOn: row.received_on,
    details,
    effect,
    marks,
    state,
    at: row.happened_at,
    by: row.person_name,
    sentence: saying('complaint-answer', { effect, state, product: row.product_name }),
    tellings: listTellings(rules, row.received_on, today).map(viewTelling),
    words,
  };
}

const viewWord = (row: SignedComplaintWord): ComplaintView['words'][number] => ({
  entryId: row.entry_id,
  state: row.state as ComplaintView['state'],
  said: row.said,
  judged: row.judged === null ? null : (JSON.parse(row.judged) as Judged),
  at: row.happened_at,
  by: row.person_name,
});

const TELLINGS: Readonly<Record<Telling['market'], string>> = {
  GB: 'tell-gb',
  NI: 'tell-ni',
  EU: 'tell-eu',
  US: 'tell-us',
};

const viewTelling = (telling: Telling): ComplaintView['tellings'][number] => ({
  market: telling.market,
  says: sayTelling(telling),
  by: telling.by,
  isPast: telling.isPast,
  rule: telling.rule,
  source: telling.source,
  confidence: telling.confidence,
});

const sayTelling = ({ market, by, isPast }: Telling): Saying =>
  saying(TELLINGS[market], { by, isPast: isPast ? 'yes' : 'no' });
