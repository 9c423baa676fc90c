import { exact, sumOf, toText } from '../../core/quantity/index.ts';
import { say, sayDateWithYear, sayDecimal, sayWhere } from '../../words/index.ts';
import { localDate } from '../local-date.ts';
import { saying } from '../saying.ts';
import { complaintTable, unitsOf } from './effects-chapter.ts';
import type { ChangedFormula, ChangedMaterial, ReportChanges } from './read-changes.ts';
import type { ToldRevision } from './revisions-at-signing.ts';
import { type Chapter, chapter, entry, figure, tableOf, type Words, word } from './write-chapter.ts';

const NOTHING = saying('pf-nothing-changed');

/** How many of each kind changed that the assessor has to look at; lots that came in and what was sold are no change. */
export const countChanges = (changes: ReportChanges) => ({
  formulas: changes.formulas.filter(({ now }) => now !== null).length,
  newMaterials: changes.newMaterials.length,
  entries: listMaterialChanges(changes.changedMaterials).length,
  certificates: changes.certificates.length,
  complaints: changes.complaints.length,
});

const KINDS = {
  formulas: 'changes-kind-formulas',
  newMaterials: 'changes-kind-newMaterials',
  entries: 'changes-kind-entries',
  certificates: 'changes-kind-certificates',
  complaints: 'changes-kind-complaints',
} as const;

/** Each kind with its number: what does not count is not said. */
export const sayChanges = (counts: ReturnType<typeof countChanges>): string =>
  Object.entries(counts)
    .filter(([, n]) => n > 0)
    .map(([kind, n]) => say(saying(KINDS[kind as keyof typeof KINDS], { n })))
    .join(', ');

export function changesChapters(changes: ReportChanges): Chapter[] {
  return [
    chapter('formulas', 1, saying('changes-formulas'), {
      says: changes.formulas.every(({ now }) => now === null) ? [NOTHING] : [],
      entries: changes.formulas
        .filter(({ now }) => now === null)
        .map(({ name, before }) => entry(name, saying('changes-formula-same', { number: before.number }))),
    }),
    ...changes.formulas.flatMap((one) => formulaChapter(one, changes.itemNames)),
    materialsChapter(changes),
    lotsChapter(changes),
    certificatesChapter(changes),
    chapter('complaints', 1, saying('changes-complaints'), {
      says: changes.complaints.length === 0 ? [NOTHING] : [],
      tables: complaintTable(changes.complaints),
    }),
    chapter('sold', 1, saying('changes-sold'), {
      says: changes.products.length === 0 ? [saying('changes-no-products')] : [],
      entries: changes.products.map(({ id, name }) =>
        entry(name, saying('pf-units', { n: unitsOf(changes.sold.filter((row) => row.productId === id)) })),
      ),
    }),
  ];
}

function formulaChapter(
  { name, before: then, now }: ChangedFormula,
  names: ReadonlyMap<string, string>,
): Chapter[] {
  if (now === null) return [];
  const rows = compareLines(then, now, names);
  return [
    chapter(name, 2, name, {
      says: [
        saying('changes-formula', { from: then.number, to: now.number, on: now.on }),
        ...(rows.length === 0 ? [saying('changes-lines-same')] : []),
      ],
      tables: tableOf(
        saying('changes-table-lines'),
        [
          word(saying('pf-col-material')),
          figure(saying('changes-col-then')),
          figure(saying('changes-col-now')),
        ],
        rows,
      ),
    }),
  ];
}

/** Shares in percent of what is weighed together; what is not in it is nought. */
function sharesOf({ details: { lines } }: ToldRevision): Map<string, string> {
  const total = sumOf(lines.map(({ grams }) => grams));
  const grams = new Map<string, string>();
  for (const line of lines)
    grams.set(line.itemId, toText(exact(grams.get(line.itemId) ?? 0).plus(line.grams)));
  return new Map(
    [...grams].map(([id, own]) => [
      id,
      total.isZero() ? '0' : toText(exact(own).times(100).div(total).toDecimalPlaces(4)),
    ]),
  );
}

export function compareLines(
  then: ToldRevision,
  now: ToldRevision,
  names: ReadonlyMap<string, string>,
): Words[][] {
  const before = sharesOf(then);
  const after = sharesOf(now);
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((id) => before.get(id) !== after.get(id))
    .map((id) => [names.get(id) ?? id, sayDecimal(before.get(id) ?? '0'), sayDecimal(after.get(id) ?? '0')]);
}

/** Fields of a material that its assessment may hang on; a price does not. */
const LOOKED_AT = [
  'supplier',
  'inciEu',
  'botanical',
  'cas',
  'plantPart',
  'process',
  'role',
  'constituents',
  'constituentsAre',
  'constituentsPaper',
  'supplierMostPercent',
  'supplierPaper',
] as const;

interface MaterialChange {
  readonly name: string;
  readonly field: string;
  readonly before: string;
  readonly after: string;
}

export const listMaterialChanges = (changed: readonly ChangedMaterial[]): MaterialChange[] =>
  changed.flatMap(({ name, before, after }) =>
    LOOKED_AT.filter((field) => written(before[field]) !== written(after[field])).map((field) => ({
      name,
      field,
      before: shown(before[field]),
      after: shown(after[field]),
    })),
  );

const written = (value: unknown): string => JSON.stringify(value ?? null);

/** A list of substances is too long for a cell: each by its name and the most of it. */
function shown(value: unknown): string {
  if (!Array.isArray(value)) return value === null || value === undefined ? '' : String(value);
  return value
    .map((one: unknown) => {
      if (typeof one !== 'object' || one === null) return String(one);
      const { name, leastPercent, mostPercent } = one as Record<string, unknown>;
      return `${name} ${leastPercent} to ${mostPercent} %`;
    })
    .join(', ');
}

function materialsChapter({ newMaterials, changedMaterials, itemNames }: ReportChanges): Chapter {
  const changes = listMaterialChanges(changedMaterials);
  const isSame = newMaterials.length === 0 && changes.length === 0;
  return chapter('materials', 1, saying('changes-materials'), {
    says: isSame ? [NOTHING] : [],
    entries:
      newMaterials.length === 0
        ? []
        : [
            entry(
              saying('changes-new-materials'),
              newMaterials.map((id) => itemNames.get(id) ?? id).join(', '),
            ),
          ],
    tables: tableOf(
      saying('changes-table-materials'),
      [
        word(saying('pf-col-material')),
        word(saying('changes-col-what')),
        word(saying('changes-col-then')),
        word(saying('changes-col-now')),
      ],
      changes.map((row): Words[] => [
        row.name,
        sayWhere(row.field),
        row.before === '' ? saying('pf-none') : row.before,
        row.after === '' ? saying('pf-none') : row.after,
      ]),
    ),
  });
}

function lotsChapter({ lots }: ReportChanges): Chapter {
  return chapter('lots', 1, saying('changes-lots'), {
    says: lots.length === 0 ? [saying('changes-no-lots')] : [],
    tables: tableOf(
      saying('changes-table-lots'),
      [
        word(saying('pf-col-material')),
        word(saying('changes-col-lot')),
        word(saying('changes-col-since')),
        word(saying('pf-col-supplier')),
        word(saying('changes-col-supplier-lot')),
      ],
      [...lots]
        .sort(
          (one, other) =>
            one.item_name.localeCompare(other.item_name) || one.number.localeCompare(other.number),
        )
        .map((lot): Words[] => [
          lot.item_name,
          lot.number,
          sayDateWithYear(lot.since),
          lot.supplier === '' ? saying('pf-missing') : lot.supplier,
          lot.supplier_lot ?? saying('pf-missing'),
        ]),
    ),
  });
}

function certificatesChapter({ certificates, itemNames, house }: ReportChanges): Chapter {
  return chapter('certificates', 1, saying('changes-certificates'), {
    says: certificates.length === 0 ? [saying('changes-no-certificates')] : [],
    tables: tableOf(
      saying('changes-table-certificates'),
      [
        word(saying('pf-col-material')),
        word(saying('changes-col-lot')),
        word(saying('changes-col-reference')),
        word(saying('changes-col-dated')),
        word(saying('changes-col-entered')),
      ],
      certificates.map((row): Words[] => [
        itemNames.get(row.item_id) ?? '',
        row.lot_number,
        row.reference,
        row.dated_on === null ? saying('pf-missing') : sayDateWithYear(row.dated_on),
        sayDateWithYear(localDate(row.happened_at, house.timeZone)),
      ]),
    ),
  });
}
