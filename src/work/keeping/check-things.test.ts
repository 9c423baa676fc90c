import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench, reviseBase } from '../../../test/workshop/build-making.ts';
import { buildOrder, nameWorkshop } from '../../../test/workshop/build-order.ts';
import { writtenFile } from '../../../test/workshop/build-product-file.ts';
import { plainIngredient } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { checkUp as lookThrough } from '../../storage/index.ts';

let bench: TestWorkshop;
let shop: MakingBench;
let orderId = '';

/** A workshop in which everything that can be edited was edited once, and some of it taken away. */
beforeAll(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
  const changed = { name: 'Ada Quill', isActive: true };
  await bench.get('savePerson', { body: { id: bench.people.first, version: 1, ...changed } });
  await dropConstituents();
  await reviseBase(bench, shop, ['600', '400']);
  await changeOrder();
  await writeFile();
  await designLabels();
});
afterAll(() => bench.close());

async function dropConstituents(): Promise<void> {
  const details = plainIngredient({ name: 'Lavender oil', role: 'fragrance' });
  await bench.get('saveMaterial', { body: { id: shop.materials.scent, version: 1, details } });
}

async function changeOrder(): Promise<void> {
  const customer = await bench.get('saveCustomer', { body: { name: 'Brackwater', address: '' } });
  orderId = await buildOrder(bench, shop.product, 2, { customerId: customer.id });
  const order = { customerId: customer.id, placedOn: '2026-11-20', wantedBy: '2026-11-28', note: '' };
  const lines = [
    { productId: shop.product, units: 3 },
    { productId: shop.smallProduct, units: 1 },
  ];
  await bench.get('saveOrder', { body: { id: orderId, version: 1, ...order, lines } });
  await bench.get('saveOrder', { body: { id: orderId, version: 2, ...order, lines: lines.slice(0, 1) } });
}

async function writeFile(): Promise<void> {
  const params = { id: shop.product };
  const write = (version: number | null, animalTesting: string) =>
    bench.get('saveProductFile', { params, body: { version, details: writtenFile([], { animalTesting }) } });
  await write(null, 'Nothing is said yet.');
  await write(1, 'None.');
  const point = { name: 'Linalool', milligramsPerKgDay: '10', route: 'oral' as const, source: 'Invented' };
  const { id } = await bench.get('savePointOfDeparture', { body: { details: point } });
  const details = { ...point, milligramsPerKgDay: '20' };
  await bench.get('savePointOfDeparture', { body: { id, version: 1, details } });
}

async function designLabels(): Promise<void> {
  const params = { id: shop.product };
  const { details } = await bench.get('getLabelDesign', { params });
  await bench.get('saveLabelDesign', { params, body: { version: null, details } });
  await bench.get('saveLabelDesign', { params, body: { version: 1, details: { ...details, spare: 7 } } });
  const geometry = {
    ...{ pageWidthMm: 210, pageHeightMm: 297, columns: 3, rows: 4, leftMm: 10, topMm: 10 },
    ...{ pitchAcrossMm: 64, pitchDownMm: 64, label: { shape: 'round' as const, diameterMm: 60 } },
  };
  await bench.get('saveLabelSheet', { body: { details: { name: 'Round sixties', geometry } } });
}

const wrong = async (): Promise<readonly string[]> =>
  (await lookThrough(bench.context.storage)).flatMap((finding) => finding.wrong);

/** As another program would, past every guard. */
function behindItsBack(statements: readonly string[]): void {
  const { handle } = bench.context.storage;
  handle.pragma('foreign_keys = OFF');
  const triggers = handle.prepare("select name from sqlite_master where type = 'trigger'").all();
  for (const { name } of triggers as { name: string }[]) handle.exec(`drop trigger "${name}"`);
  for (const statement of statements) handle.exec(statement);
}

/** Each with what the check-up must say of it. */
const CHANGES: readonly (readonly [statement: string, says: RegExp])[] = [
  [
    "update workshop set details = replace(details, 'Bench Lane', 'Far Lane')",
    /^workshop of .*\(workshop-changed\) was changed$/,
  ],
  [
    "update person set name = 'Ada Quell' where name = 'Ada Quill'",
    /^person \S+ \(Ada Quell\) of .* was changed$/,
  ],
  ['update customer set is_erased = 1', /^customer \S+ of .*\(customer-added\) was changed$/],
  ["update place set kind = 'stall' where name = 'Shelf'", /^place \S+ \(Shelf\) of .* was changed$/],
  [
    "update scale set readability_grams = '0.001' where name = 'Small scale'",
    /^scale \S+ \(Small scale\) of .* was changed$/,
  ],
  [
    "update material set details = replace(details, '0.92', '0.29') where name = 'Shea butter'",
    /^material \S+ \(Shea butter\) of .* was changed$/,
  ],
  [
    "insert into constituent select id, 0, 'Linalool', '78-70-6', '0', '0', '0', '', 'memory' from material where name = 'Lavender oil'",
    /^constituent \S+ 0 of .*\(material-changed\) was added later$/,
  ],
  ["update formula set code = 'XX' where code = 'QB'", /^formula \S+ \(Quiet base\) of .* was changed$/],
  [
    "update revision set details = replace(details, '5A', '9') where details like '%5A%'",
    /^revision \S+ of .* was changed$/,
  ],
  ["update revision_line set grams = '601' where grams = '600'", /^revision_line \S+ 0 of .* was changed$/],
  ["delete from revision_step where what = 'Whip until pale'", /^revision_step \S+ 0 of .* is missing$/],
  [
    "update product set details = replace(details, '9.50', '1.50') where name = 'Lavender butter'",
    /^product \S+ \(Lavender butter\) of .* was changed$/,
  ],
  ["update report set review_by = '2099-01-01'", /^report \S+ \(.+\) of .* was changed$/],
  ['delete from report_formula', /^report_formula \S+ \S+ of .* is missing$/],
  [
    "update report_range set most_percent = '100' where most_percent = '1.5'",
    /^report_range \S+ \S+ of .* was changed$/,
  ],
  [
    "update customer_order set wanted_by = '2026-12-28'",
    /^customer_order \S+ \(101\) of .*\(order-changed\) was changed$/,
  ],
  [
    "update product_file set details = replace(details, 'None.', 'Some.')",
    /^product_file \S+ of .*\(product-file-written\) was changed$/,
  ],
  [
    'update point_of_departure set details = replace(details, \'"20"\', \'"2000"\')',
    /^point_of_departure \S+ \(Linalool\) of .*\(point-of-departure-changed\) was changed$/,
  ],
  [
    `update label_design set details = replace(details, '"spare":7', '"spare":9')`,
    /^label_design \S+ of .* was changed$/,
  ],
  [
    `update label_sheet set details = replace(details, '"columns":3', '"columns":2')`,
    /^label_sheet \S+ \(Round sixties\) of .* was changed$/,
  ],
  [
    "insert into device values ('d', 'Tablet', 'h', '2026-11-26T08:00:00Z', 0, 1)",
    /^device d \(Tablet\) was added later$/,
  ],
  [
    "insert into person_pin select id, 's', 'h', 'k', 1 from person limit 1",
    /^person_pin \S+ was added later$/,
  ],
  [
    "insert into unlocked select 'd', id, '2026-11-26T08:00:00Z' from person limit 1",
    /^unlocked d \S+ was added later$/,
  ],
  ['update order_line set units = 30 where units = 3', /^order_line \S+ of .*\(order-changed\) was changed$/],
];

describe('a check-up of what can be edited', () => {
  it('finds a workshop sound in which everything was edited', async () => {
    expect(await wrong()).toEqual([]);
  });

  it('leaves out what a customer may ask to be erased, which even a hash would give away', async () => {
    behindItsBack([
      "update customer set address = 'elsewhere'",
      "update customer_order set note = 'changed'",
    ]);
    expect(await wrong()).toEqual([]);
  });

  it('names the thing, and the entry that spoke of it last, when one was changed behind its back', async () => {
    const tables = bench.context.storage.handle
      .prepare("select name from sqlite_master where type = 'table' and name not like 'sqlite_%'")
      .all() as { name: string }[];
    const tried = new Set(CHANGES.map(([statement]) => /(?:update|into|from) (\w+)/.exec(statement)?.[1]));
    const untried = tables.map(({ name }) => name).filter((name) => !tried.has(name));
    expect(untried.filter((name) => !isRecord(name)).toSorted()).toEqual(NOT_COMPARED);
    behindItsBack(CHANGES.map(([statement]) => statement));
    const found = await wrong();
    for (const [statement, says] of CHANGES)
      expect(
        found.some((each) => says.test(each)),
        `${statement}: ${found.join('; ')}`,
      ).toBe(true);
  });
});

/** What the entries tell in another way: the chain itself, and what can be erased or is of this computer only. */
const NOT_COMPARED = [
  'backup_made',
  'chain_end',
  'device_seen',
  'dispatch_tracking',
  'entry',
  'pin_try',
  'request_salt',
];

/** A record names its entry, or the batch it came with. */
function isRecord(table: string): boolean {
  const columns = bench.context.storage.handle.pragma(`table_info(${table})`) as { name: string }[];
  return (
    columns.some(({ name }) => name === 'entry_id' || name === 'batch_id') && !NOT_COMPARED.includes(table)
  );
}
