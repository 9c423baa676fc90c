import { expandFormula } from '../../core/formula/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import { findUseContradicted } from '../../core/safety/index.ts';
import { bodyParts, productTypes } from '../../reference/index.ts';
import { type FormulaRow, findFormula, findMaterial, type Writer } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import { formulaLinesOf } from './formula-lines.ts';
import { readFormulaLookup } from './formula-lookup.ts';
import type { RevisionDetails } from './revision-view.ts';

/** What cannot stand in a revision: things that are not there, ranges that cross, a base that comes to contain itself. */
export async function judgeRevision(
  tx: Writer,
  formula: FormulaRow,
  details: RevisionDetails,
): Promise<readonly Problem[]> {
  const own = [
    ...judgeWords(details),
    ...judgeUses(details),
    ...judgeRanges(details),
    ...(await Promise.all(details.lines.map((line, index) => judgeLine(tx, line, index)))).flat(),
  ];
  return own.length > 0 ? own : judgeComposition(tx, formula, details);
}

const isKnown = (rows: readonly { readonly id: string }[], word: string): boolean =>
  word === '' || rows.some((row) => row.id === word);

/** A word that no rule of law uses would let every rule for a part of the body pass by. */
function judgeWords({ bodyPart, productType }: RevisionDetails): Problem[] {
  return [
    ...(isKnown(bodyParts, bodyPart) ? [] : [unknownWord('details.bodyPart', bodyPart, bodyParts)]),
    ...(isKnown(productTypes, productType)
      ? []
      : [unknownWord('details.productType', productType, productTypes)]),
  ];
}

/** One wrong word moves every threshold by a factor of ten: it is asked before anything is judged by it. */
const judgeUses = ({ alsoUsedAs, ...own }: RevisionDetails): Problem[] =>
  [own, ...alsoUsedAs].flatMap((use, index) =>
    findUseContradicted(use).map(({ by, word, allowed }) =>
      problem('use-contradicted', index === 0 ? 'details.use' : `details.alsoUsedAs[${index - 1}].use`, {
        found: use.use,
        allowed,
        parameters: {
          by,
          word: word.replaceAll('-', ' '),
          isWashedOff: allowed === 'rinse-off' ? 'yes' : 'no',
        },
      }),
    ),
  );

const unknownWord = (where: string, found: string, rows: readonly { readonly id: string }[]): Problem =>
  problem('value-not-one-of', where, { found, allowed: rows.map((row) => row.id).join(', ') });

function judgeRanges({ settingHours, steps }: RevisionDetails): Problem[] {
  const setting =
    settingHours && settingHours.least > settingHours.most
      ? [
          problem('setting-range-crossed', 'details.settingHours', {
            found: settingHours.least,
            allowed: settingHours.most,
          }),
        ]
      : [];
  return [...setting, ...steps.flatMap(judgeStep)];
}

function judgeStep(step: RevisionDetails['steps'][number], index: number): Problem[] {
  const { leastCelsius: least, mostCelsius: most, leastHours, mostHours } = step;
  const where = `details.steps[${index}]`;
  return [
    ...(least !== null && most !== null && exact(least).gt(most)
      ? [problem('celsius-range-crossed', where, { found: least, allowed: most })]
      : []),
    ...(leastHours !== null && mostHours !== null && exact(leastHours).gt(mostHours)
      ? [problem('hours-range-crossed', where, { found: leastHours, allowed: mostHours })]
      : []),
    ...(['minutes', 'roundMinutes', 'growsPercent', 'leastHours', 'mostHours'] as const).flatMap((field) =>
      mustLieAbove(step[field], `${where}.${field}`),
    ),
  ];
}

const mustLieAbove = (value: string | null, where: string): Problem[] =>
  value !== null && exact(value).lte(0)
    ? [problem('value-not-above', where, { found: value, allowed: 0 })]
    : [];

async function judgeLine(
  tx: Writer,
  line: RevisionDetails['lines'][number],
  index: number,
): Promise<Problem[]> {
  const where = `details.lines[${index}].itemId`;
  if (line.itemKind === 'formula') {
    const formula = await findFormula(tx, line.itemId);
    if (!formula) return [thingNotFound(where, line.itemId)];
    return formula.kind === 'base' ? [] : [problem('mixture-in-formula', where, { found: formula.name })];
  }
  const material = await findMaterial(tx, line.itemId);
  if (!material) return [thingNotFound(where, line.itemId)];
  return material.kind === 'ingredient'
    ? []
    : [problem('packaging-in-formula', where, { found: material.name })];
}

/** Opened as if it were written already: a base that would contain itself through others is found that way too. */
async function judgeComposition(
  tx: Writer,
  formula: FormulaRow,
  details: RevisionDetails,
): Promise<readonly Problem[]> {
  const lines = details.lines.map((line) => ({
    stage: line.stage,
    item_kind: line.itemKind,
    item_id: line.itemId,
    grams: line.grams,
  }));
  const draft = {
    revisionId: 'draft',
    formulaId: formula.id,
    name: formula.name,
    standing: details.standing,
    lines: formulaLinesOf(lines),
  };
  const opened = expandFormula('draft', await readFormulaLookup(tx, { draft }));
  return opened.ok ? [] : opened.problems;
}
