import { formulaWords } from '../../../words/index.ts';
import type { BodyOf } from '../../api/shapes.ts';

type Use = NonNullable<BodyOf<'saveRevision'>['details']['alsoUsedAs']>[number];

/** What makers sell one butter for besides: as law and IFRA ask of each (IFRA categories, 49th Amendment). */
const OTHER_USES = {
  body: { use: 'leave-on', category: '5A', bodyPart: 'body', productType: 'body-lotion' },
  face: { use: 'leave-on', category: '5B', bodyPart: 'face', productType: 'face-cream' },
  hands: { use: 'leave-on', category: '5C', bodyPart: 'hand', productType: 'hand-cream' },
  lips: { use: 'leave-on', category: '1', bodyPart: 'lip', productType: 'lip-product' },
  babies: { use: 'leave-on', category: '5D', bodyPart: '', productType: '' },
  bath: { use: 'rinse-off', category: '9', bodyPart: 'body', productType: 'bath-product' },
} as const satisfies Readonly<Record<string, Use>>;

type OtherUse = keyof typeof OTHER_USES;

const isAlike = (one: Use, other: Use): boolean =>
  one.use === other.use &&
  one.category === other.category &&
  one.bodyPart === other.bodyPart &&
  one.productType === other.productType;

const IDS = Object.keys(OTHER_USES) as OtherUse[];

export const OTHER_USE_CHOICES = IDS.map((id) => ({ id, name: formulaWords.otherUses[id] }));

export const chosenUses = (uses: readonly Use[]): string[] =>
  IDS.filter((id) => uses.some((use) => isAlike(use, OTHER_USES[id])));

/** What was entered another way and has no box here stays as it is. */
export const withChosen = (uses: readonly Use[], chosen: readonly string[]): Use[] => [
  ...IDS.filter((id) => chosen.includes(id)).map((id) => OTHER_USES[id]),
  ...uses.filter((use) => !IDS.some((id) => isAlike(use, OTHER_USES[id]))),
];
