import { type Kysely, sql } from 'kysely';
import { FIRST_HASH } from '../entry-store.ts';
import {
  freezeUsedRevisions,
  makeAppendOnly,
  noteChainEnd,
  refuseOverdraft,
  writeApplicationId,
} from '../sqlite-only.ts';
import { makeTable } from './make-table.ts';

export const RECORDS = [
  'entry',
  'movement',
  'lot_status',
  'firm_word',
  'addition',
  'step_record',
  'deviation',
  'batch_close',
  'fill_weight',
  'strike',
  'run_close',
  'release',
  'decision',
  'reservation',
  'dispatch',
  'batch',
  'batch_line',
  'batch_tin',
  'filling_run',
  'label_print',
  'attachment',
  'goods_ordered',
] as const;

async function makeThings(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'workshop', ['id'], {
    id: 'integer',
    details: 'text',
    is_example: 'integer',
    version: 'integer',
  });
  await makeTable(db, 'person', ['id'], {
    id: 'text',
    name: 'text',
    is_active: 'integer',
    version: 'integer',
  });
  await makeTable(db, 'customer', ['id'], {
    id: 'text',
    name: 'text',
    address: 'text',
    is_erased: 'integer',
    version: 'integer',
  });
  await makeTable(db, 'place', ['id'], { id: 'text', name: 'text', kind: 'text' });
  await makeTable(db, 'scale', ['id'], {
    id: 'text',
    name: 'text',
    capacity_grams: 'text',
    readability_grams: 'text',
    repeatability_grams: 'text?',
    accuracy_class: 'text?',
    verification_interval_grams: 'text?',
    version: 'integer',
  });
  await makeTable(db, 'material', ['id'], {
    id: 'text',
    kind: 'text',
    name: 'text',
    details: 'text',
    version: 'integer',
  });
  await makeTable(db, 'constituent', ['material_id', 'position'], {
    material_id: '-> material.id',
    position: 'integer',
    name: 'text',
    cas: 'text?',
    least_percent: 'text',
    typical_percent: 'text',
    most_percent: 'text',
    source: 'text',
    confidence: 'text',
  });
  await makeTable(db, 'formula', ['id'], {
    id: 'text',
    name: 'text',
    code: 'text',
    kind: 'text',
    version: 'integer',
  });
  await makeTable(db, 'revision', ['id'], {
    id: 'text',
    formula_id: '-> formula.id',
    number: 'integer',
    details: 'text',
    version: 'integer',
  });
  await makeTable(db, 'revision_line', ['revision_id', 'position'], {
    revision_id: '-> revision.id',
    position: 'integer',
    stage: 'text',
    item_kind: 'text',
    item_id: 'text',
    grams: 'text',
  });
  await makeTable(db, 'revision_step', ['revision_id', 'position'], {
    revision_id: '-> revision.id',
    position: 'integer',
    stage: 'text',
    kind: 'text',
    what: 'text',
    least_celsius: 'text?',
    most_celsius: 'text?',
    minutes: 'text?',
    caution: 'text',
  });
  await makeTable(db, 'product', ['id'], {
    id: 'text',
    formula_id: '-> formula.id',
    name: 'text',
    details: 'text',
    version: 'integer',
  });
}

async function makeReportsAndOrders(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'attachment', ['id'], {
    id: 'text',
    entry_id: '-> entry.id',
    name: 'text',
    sha256: 'text',
    bytes: 'blob',
  });
  await makeTable(db, 'report', ['id'], {
    id: 'text',
    reference: 'text',
    base_formula_id: '->? formula.id',
    review_by: 'text',
    details: 'text',
    attachment_id: '->? attachment.id',
    version: 'integer',
  });
  await makeTable(db, 'report_formula', ['report_id', 'formula_id'], {
    report_id: '-> report.id',
    formula_id: '-> formula.id',
  });
  await makeTable(db, 'report_range', ['report_id', 'material_id'], {
    report_id: '-> report.id',
    material_id: '-> material.id',
    least_percent: 'text',
    most_percent: 'text',
  });
  await makeTable(db, 'customer_order', ['id'], {
    id: 'text',
    number: 'integer',
    customer_id: '->? customer.id',
    placed_on: 'text',
    wanted_by: 'text',
    note: 'text',
    cancelled: 'integer',
    cancelled_because: 'text',
    version: 'integer',
  });
  await makeTable(db, 'order_line', ['id'], {
    id: 'text',
    order_id: '-> customer_order.id',
    position: 'integer',
    product_id: '-> product.id',
    units: 'integer',
  });
  await makeTable(db, 'backup_made', ['id'], {
    id: 'integer',
    at: 'text',
    kind: 'text',
    file: 'text',
    bytes: 'integer',
    last_seq: 'integer',
    last_hash: 'text',
  });
}

async function makeEntriesAndLots(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'entry', ['id'], {
    seq: 'integer',
    id: 'text',
    kind: 'text',
    subject_kind: 'text',
    subject_id: 'text',
    payload: 'text',
    request_hash: 'text',
    rows: 'text',
    happened_at: 'text',
    recorded_at: 'text',
    person_id: '->? person.id',
    device: 'text',
    previous_hash: 'text',
    hash: 'text',
  });
  await makeTable(db, 'chain_end', ['id'], { id: 'integer', seq: 'integer', hash: 'text' });
  await makeTable(db, 'request_salt', ['entry_id'], { entry_id: '-> entry.id', salt: 'text' });
  await makeTable(db, 'batch', ['id'], {
    id: 'text',
    entry_id: '-> entry.id',
    number: 'text',
    formula_id: '-> formula.id',
    revision_id: '-> revision.id',
    purpose: 'text',
    markets: 'text',
    planned_ug: 'integer',
    retained_ug: 'integer?',
    declined_because: 'text?',
    started_at: 'text',
  });
  await makeTable(db, 'filling_run', ['id'], {
    id: 'text',
    entry_id: '-> entry.id',
    number: 'text',
    batch_id: '-> batch.id',
    product_id: '-> product.id',
    product_details: 'text',
    wanted: 'integer',
    scale_id: '-> scale.id',
    scale_error_ug: 'integer',
    aim_ug: 'integer',
    tare_ug: 'integer?',
    started_at: 'text',
  });
  await makeTable(db, 'lot', ['id'], {
    id: 'text',
    entry_id: '-> entry.id',
    number: 'text',
    item_kind: 'text',
    item_id: 'text',
    unit: 'text',
    since: 'text',
    found_at_opening: 'integer',
    supplier: 'text',
    supplier_lot: 'text?',
    best_before: 'text?',
    keep_until: 'text?',
    firm_from: 'text?',
    firm_to: 'text?',
    paid: 'text?',
    received: 'integer',
    batch_id: '->? batch.id',
    filling_run_id: '->? filling_run.id',
    version: 'integer',
  });
  await makeTable(db, 'lot_status', ['entry_id', 'lot_id'], {
    entry_id: '-> entry.id',
    lot_id: '-> lot.id',
    status: 'text',
    reason: 'text',
  });
  await makeTable(db, 'firm_word', ['entry_id'], {
    entry_id: '-> entry.id',
    lot_id: '-> lot.id',
    remark: 'text',
    said_on: 'text',
  });
  await makeTable(db, 'goods_ordered', ['entry_id'], {
    entry_id: '-> entry.id',
    material_id: '-> material.id',
    is_on_its_way: 'integer',
    ordered_on: 'text?',
    supplier: 'text',
    expected_on: 'text?',
  });
  await makeTable(db, 'dispatch', ['id'], {
    id: 'text',
    entry_id: '-> entry.id',
    order_id: '-> customer_order.id',
  });
  await makeTable(db, 'dispatch_tracking', ['dispatch_id'], {
    dispatch_id: '-> dispatch.id',
    tracking: 'text',
  });
  await makeTable(db, 'movement', ['id'], {
    id: 'text',
    entry_id: '-> entry.id',
    lot_id: '-> lot.id',
    place_id: '-> place.id',
    kind: 'text',
    quantity: 'integer',
    reason: 'text',
    batch_id: '->? batch.id',
    filling_run_id: '->? filling_run.id',
    order_line_id: '->? order_line.id',
    dispatch_id: '->? dispatch.id',
  });
}

async function makeRecords(db: Kysely<never>): Promise<void> {
  await makeTable(db, 'batch_line', ['batch_id', 'position'], {
    batch_id: '-> batch.id',
    position: 'integer',
    stage: 'text',
    item_kind: 'text',
    item_id: 'text',
    lot_id: '-> lot.id',
    exact_grams: 'text',
    target_ug: 'integer',
    low_ug: 'integer',
    high_ug: 'integer',
    scale_id: '->? scale.id',
    weighing: 'text',
  });
  await makeTable(db, 'batch_tin', ['batch_id', 'product_id'], {
    batch_id: '-> batch.id',
    product_id: '-> product.id',
    units: 'integer',
  });
  await makeTable(db, 'addition', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    position: 'integer',
    lot_id: '-> lot.id',
    scale_id: '->? scale.id',
    target_ug: 'integer',
    actual_ug: 'integer',
  });
  await makeTable(db, 'step_record', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    position: 'integer',
    celsius: 'text?',
    minutes: 'text?',
    remark: 'text',
    weighed: 'text?',
  });
  await makeTable(db, 'deviation', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    screen: 'integer?',
    what: 'text',
    why: 'text',
  });
  await makeTable(db, 'batch_close', ['entry_id'], {
    entry_id: '-> entry.id',
    batch_id: '-> batch.id',
    outcome: 'text',
    yield_ug: 'integer?',
    lot_id: '->? lot.id',
    reason: 'text',
  });
  await makeTable(db, 'fill_weight', ['entry_id'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    number: 'integer',
    gross_ug: 'integer',
    tare_ug: 'integer',
  });
  await makeTable(db, 'strike', ['entry_id'], {
    entry_id: '-> entry.id',
    struck_entry_id: '-> entry.id',
    reason: 'text',
  });
  await makeTable(db, 'run_close', ['entry_id'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    units: 'integer',
    retained_ug: 'integer?',
    declined_because: 'text?',
    left_ug: 'integer',
    lost_ug: 'integer',
    lot_id: '->? lot.id',
  });
  await makeTable(db, 'release', ['entry_id'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    verdict: 'text',
    reason: 'text',
    checks: 'text',
  });
  await makeTable(db, 'decision', ['entry_id'], {
    entry_id: '-> entry.id',
    revision_id: '-> revision.id',
    unknown_key: 'text',
    verdict: 'text',
    reason: 'text',
    upon: 'text',
  });
  await makeTable(db, 'reservation', ['entry_id', 'order_line_id', 'lot_id'], {
    entry_id: '-> entry.id',
    order_line_id: '-> order_line.id',
    lot_id: '-> lot.id',
    units: 'integer',
  });
  await makeTable(db, 'label_print', ['entry_id'], {
    entry_id: '-> entry.id',
    filling_run_id: '-> filling_run.id',
    market: 'text',
    copies: 'integer',
    sha256: 'text',
  });
}

/** What must be found fast, and what must never stand twice. */
async function makeIndexes(db: Kysely<never>): Promise<void> {
  const unique: Record<string, string[]> = {
    entry: ['seq'],
    lot: ['number'],
    batch: ['number'],
    filling_run: ['number'],
    formula: ['code'],
    customer_order: ['number'],
    revision: ['formula_id', 'number'],
    batch_close: ['batch_id'],
    run_close: ['filling_run_id'],
    release: ['filling_run_id'],
    strike: ['struck_entry_id'],
    fill_weight: ['filling_run_id', 'number'],
  };
  const plain: [string, string[]][] = [
    ['entry', ['subject_kind', 'subject_id']],
    // With the quantity, so that a balance is summed without looking into the table.
    ['movement', ['lot_id', 'place_id', 'quantity']],
    ['movement', ['entry_id']],
    ['lot', ['item_kind', 'item_id']],
    ['lot', ['batch_id']],
    ['lot', ['filling_run_id']],
    ['lot_status', ['lot_id']],
    ['firm_word', ['lot_id']],
    ['goods_ordered', ['material_id']],
    ['addition', ['batch_id']],
    ['step_record', ['batch_id']],
    ['deviation', ['batch_id']],
    ['reservation', ['order_line_id']],
    ['reservation', ['lot_id']],
    ['order_line', ['order_id']],
    ['filling_run', ['batch_id']],
    ['decision', ['revision_id']],
    ['dispatch', ['order_id']],
    ['batch', ['revision_id']],
    ['label_print', ['filling_run_id']],
  ];
  // What most movements do not belong to: a weighing writes no page for an order that it has nothing to do with.
  for (const column of ['batch_id', 'filling_run_id', 'dispatch_id', 'order_line_id']) {
    await db.schema
      .createIndex(`movement_by_${column}`)
      .on('movement')
      .column(column)
      .where(sql.ref(column), 'is not', null)
      .execute();
  }
  for (const [table, columns] of Object.entries(unique)) {
    await db.schema.createIndex(`${table}_once`).on(table).columns(columns).unique().execute();
  }
  for (const [table, columns] of plain) {
    await db.schema
      .createIndex(`${table}_by_${columns.join('_')}`)
      .on(table)
      .columns(columns)
      .execute();
  }
}

export async function up(db: Kysely<never>): Promise<void> {
  await writeApplicationId(db);
  await makeThings(db);
  await makeEntriesAndLots(db);
  await makeReportsAndOrders(db);
  await makeRecords(db);
  await makeIndexes(db);
  for (const table of RECORDS) await makeAppendOnly(db, table);
  await refuseOverdraft(db);
  await freezeUsedRevisions(db);
  await noteChainEnd(db, FIRST_HASH);
}
