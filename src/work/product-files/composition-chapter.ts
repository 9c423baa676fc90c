import type { OpenedRevision } from '../../check/index.ts';
import { exact, toText } from '../../core/quantity/index.ts';
import { sayDecimal } from '../../words/index.ts';
import { saying } from '../saying.ts';
import type { MaterialDetails } from '../stock/material-view.ts';
import { listSubstances, shownFigure } from './expose-substances.ts';
import { labelRule } from './label-rule.ts';
import { type Chapter, chapter, figure, tableOf, type Words, word } from './write-chapter.ts';

type Functions = ReadonlyMap<string, string>;

const MISSING = saying('pf-missing');
const orMissing = (text: string): Words => (text === '' ? MISSING : text);

const ROLES: Readonly<Record<NonNullable<MaterialDetails['role']>, string>> = {
  fragrance: 'pf-role-fragrance',
  colourant: 'pf-role-colourant',
  preservative: 'pf-role-preservative',
  'uv-filter': 'pf-role-uv-filter',
};

/** Colourant, fragrance, preservative and UV filter are told by the material's role; the rest is typed in the file. */
export function functionOf(id: string, { role }: MaterialDetails, functions: Functions): Words {
  const own = functions.get(id) ?? '';
  if (own !== '') return own;
  return role === null ? '' : saying(ROLES[role]);
}

/** Digits of a share that are read; the data beside it has them all. */
const SHOWN_PLACES = 4;

/** Everything that is weighed in, bases opened, and what each is known to bring in. */
export const compositionChapter = (
  opened: OpenedRevision,
  functions: Functions,
  rest: Partial<Chapter> = {},
): Chapter =>
  chapter('composition', 2, labelRule('cpsr-a1').rule, {
    ...rest,
    says: [saying('pf-composition-says')],
    cautions: cautionsOf(opened),
    tables: [...materialTable(opened, functions), ...substanceTable(opened)],
  });

function materialTable({ expanded, materials }: OpenedRevision, functions: Functions) {
  const rows = [...expanded.materials]
    .sort((one, other) => other.percent.cmp(one.percent))
    .map(({ materialId, percent }): Words[] => {
      const material = materials.get(materialId);
      if (!material) return ['', '', '', '', '', ''];
      return [
        orMissing(material.inciEu),
        material.name,
        orMissing(material.cas.join(', ')),
        functionOf(materialId, material, functions) || MISSING,
        orMissing(material.supplier),
        sayDecimal(toText(exact(percent).toDecimalPlaces(SHOWN_PLACES))),
      ];
    });
  const columns = [
    word(saying('pf-col-inci')),
    word(saying('pf-col-material')),
    word(saying('pf-col-cas')),
    word(saying('pf-col-function')),
    word(saying('pf-col-supplier')),
    figure(saying('pf-col-percent')),
  ];
  return tableOf(saying('pf-table-materials'), columns, rows);
}

/** Only what comes in with a material: the materials themselves stand in the table before. */
function substanceTable(opened: OpenedRevision) {
  const own = new Set([...opened.materials.values()].map(({ inciEu, name }) => inciEu || name));
  const rows = listSubstances(opened)
    .filter(({ name }) => !own.has(name))
    .map(({ name, cas, mostPercent, fromMaterials, isRemembered }): Words[] => [
      name,
      cas ?? '',
      fromMaterials.join(', '),
      sayDecimal(shownFigure(mostPercent)),
      isRemembered ? saying('pf-from-memory') : '',
    ]);
  const columns = [
    word(saying('pf-col-substance')),
    word(saying('pf-col-cas')),
    word(saying('pf-col-from')),
    figure(saying('pf-col-most')),
    word(saying('pf-col-known')),
  ];
  return tableOf(saying('pf-table-substances'), columns, rows);
}

/** What the assessor has to know of how well it is known. */
function cautionsOf({ materials }: OpenedRevision) {
  const unknown = [...materials.values()].filter(
    ({ constituentsAre, constituents }) => constituentsAre !== 'complete' && constituents.length === 0,
  );
  const partial = [...materials.values()].filter(
    ({ constituentsAre, constituents }) => constituentsAre !== 'complete' && constituents.length > 0,
  );
  const named = (rows: readonly MaterialDetails[]) => rows.map(({ name }) => name).join(', ');
  return [
    ...(unknown.length === 0
      ? []
      : [saying('pf-composition-unknown', { n: unknown.length, names: named(unknown) })]),
    ...(partial.length === 0
      ? []
      : [saying('pf-composition-partial', { n: partial.length, names: named(partial) })]),
  ];
}
