import { findWhatHangsOnMemory } from '../core/safety/index.ts';
import type { Checked, MaterialDetails } from './checked.ts';
import { listUnknowns } from './list-unknowns.ts';
import { usesOf } from './uses-of.ts';

/** What a supplier's papers would have to say of one material. */
export interface PaperRequest {
  readonly material: MaterialDetails;
  readonly substances: readonly string[];
  readonly asksComposition: boolean;
  readonly ifraCategories: readonly string[];
  readonly asksPeroxide: boolean;
  readonly figures: readonly string[];
  readonly asksAllergens: boolean;
  readonly asksIdentity: boolean;
  readonly asksOrigins: boolean;
}

const IDENTITY: ReadonlySet<string> = new Set([
  'unknown-shared-cas',
  'unknown-ambiguous-name',
  'unknown-name-contradicts-fields',
  'unknown-may-be-prohibited',
  'unknown-label-name',
]);
const AMOUNT: ReadonlySet<string> = new Set(['unknown-amount', 'unknown-label-amount']);
const FIGURE: ReadonlySet<string> = new Set(['unknown-needs-certificate', 'unknown-counted-as-other']);

/** Of each material with something open, or something that hangs on memory, the papers that would answer. */
export function listRequests(checked: Checked): PaperRequest[] {
  const { materials, details } = checked.opened;
  const hanging = checked.groups.flatMap(({ answer }) => {
    const { hangs, over } = findWhatHangsOnMemory(answer.markets);
    return [...hangs, ...over];
  });
  const unknown = listUnknowns(checked).filter(({ key }) => !checked.decisions.has(key));
  const categories = [...new Set(usesOf(details).map(({ category }) => category))];
  return [...materials.values()]
    .map((material): PaperRequest => {
      const things = hanging.filter(({ fromMaterials }) => fromMaterials.includes(material.name));
      const open = unknown.filter(({ upon }) => upon.some((one) => one.material.name === material.name));
      const amounts = things.filter(({ remembered }) => remembered.includes('amount'));
      const has = (codes: ReadonlySet<string>) => open.some(({ why }) => codes.has(why.code));
      const measured = open.filter(({ why }) => FIGURE.has(why.code));
      const asksIfra =
        things.some(({ kind, remembered }) => kind === 'ifra' && remembered.includes('rule')) ||
        open.some(({ why }) => why.code === 'unknown-value');
      const asksComposition = material.constituentsAre !== 'complete' || amounts.length > 0 || has(AMOUNT);
      return {
        material,
        substances: [
          ...new Set([
            ...amounts.map(({ substance }) => substance),
            ...open.filter(({ why }) => AMOUNT.has(why.code)).map(({ substance }) => substance),
          ]),
        ].filter((name) => name !== material.name),
        asksComposition,
        ifraCategories: asksIfra || material.role === 'fragrance' ? categories : [],
        asksPeroxide: measured.some(({ why }) => why.parameters.hasMost === true),
        figures: [
          ...new Set(
            measured.flatMap(({ why, substance }) =>
              why.parameters.hasMost === true || !why.parameters.asWhat
                ? []
                : [`${String(why.parameters.asWhat)} of ${substance}`],
            ),
          ),
        ],
        asksAllergens: material.role === 'fragrance' || things.some(({ about }) => about === 'name'),
        asksIdentity: has(IDENTITY),
        asksOrigins: material.origins === null,
      };
    })
    .filter(isAsking);
}

/** A perfume's usual papers are asked for together with what is missing, and not by themselves. */
const isAsking = ({ asksComposition, asksPeroxide, figures, asksIdentity, asksOrigins }: PaperRequest) =>
  asksComposition || asksPeroxide || figures.length > 0 || asksIdentity || asksOrigins;
