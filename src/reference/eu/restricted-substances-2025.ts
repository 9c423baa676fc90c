/**
 * Prohibited, restricted and preservative substances that makers with natural materials meet: Annexes II, III and V of
 * Regulation (EC) No 1223/2009 as of December 2025, with Regulation (EU) 2026/78 and the rules of Great Britain.
 *
 * Choosing among the rules of a row: take those that hold for market, use, body part, product type, age, date and
 * condition (a condition that cannot be told is taken as met); a matching prohibition decides; among limits with the
 * same basis and asWhat a rule that names the product type replaces those that name none, then one that names the body
 * part; of what is left the lowest decides; a value that is not known makes the answer unknown. A row with limits for
 * finished products none of which covers the use is unknown: the annex lists what products must not contain except as
 * laid down.
 */
import type { BodyPart, ProductType, RestrictedSubstance, RestrictionCondition, VocabularyWord } from '../restricted-substance.ts';
import type { ReferenceSource } from '../sourced-row.ts';
import { prohibitedSubstances } from './restricted-annex-2-2025.ts';
import { restrictedSubstancesOfAnnex3 } from './restricted-annex-3-2025.ts';
import { restrictedPreservatives } from './restricted-annex-5-2025.ts';
import { peroxideRestrictions } from './restricted-peroxides-2025.ts';
import { substancesOutsideAnnexes } from './substances-outside-annexes-2025.ts';

export const restrictedSubstances: readonly RestrictedSubstance[] = [
  ...prohibitedSubstances, ...restrictedSubstancesOfAnnex3, ...peroxideRestrictions, ...restrictedPreservatives,
  ...substancesOutsideAnnexes,
];

export const bodyParts: readonly VocabularyWord<BodyPart>[] = [
  { id: 'body', covers: 'body skin' },
  { id: 'face', covers: 'face' },
  { id: 'lip', covers: 'lips' },
  { id: 'hand', covers: 'hands' },
  { id: 'eye', covers: 'eye area' },
  { id: 'hair', covers: 'hair' },
  { id: 'scalp', covers: 'scalp' },
  { id: 'oral', covers: 'mouth and teeth' },
  { id: 'nail', covers: 'nails' },
  { id: 'foot', covers: 'feet' },
  { id: 'nappy-area', covers: 'nappy area of small children' },
];

export const productTypes: readonly VocabularyWord<ProductType>[] = [
  { id: 'fine-fragrance', covers: 'perfume extract and eau de parfum' },
  { id: 'eau-de-toilette', covers: 'eau de toilette, eau de cologne' },
  { id: 'fragrance-cream', covers: 'scented cream sold as fragrance' },
  { id: 'hydroalcoholic-fragrance', covers: 'fragrance on an alcohol-water base' },
  { id: 'fragrance', covers: 'any fragrance product' },
  {
    id: 'body-lotion',
    covers: 'leave-on lotion, cream, butter, balm or oil for the body; to count butter and balm as body lotion is a reading, as in the exposure table',
  },
  { id: 'body-lotion-spray', covers: 'body lotion from a spray or aerosol' },
  { id: 'face-cream', covers: 'leave-on face cream, balm or oil' },
  { id: 'hand-cream', covers: 'leave-on hand cream or balm' },
  { id: 'face-make-up', covers: 'make-up for the face, not eye, lip or remover' },
  { id: 'eye-make-up', covers: 'make-up for the eyes' },
  { id: 'make-up-remover', covers: 'make-up remover' },
  { id: 'eye-shadow', covers: 'eye shadow' },
  { id: 'mascara', covers: 'mascara' },
  { id: 'eyeliner', covers: 'eyeliner' },
  { id: 'lipstick', covers: 'lipstick' },
  { id: 'lip-product', covers: 'lipstick, lip balm and other lip products' },
  { id: 'loose-face-powder', covers: 'loose face powder' },
  { id: 'powder', covers: 'powdery product' },
  { id: 'hair-spray', covers: 'leave-on hair product from a spray or aerosol' },
  { id: 'hair-conditioner', covers: 'hair conditioner' },
  { id: 'hair-straightener', covers: 'hair straightener' },
  { id: 'shampoo', covers: 'shampoo' },
  { id: 'shower-gel', covers: 'shower gel, body wash' },
  { id: 'bath-product', covers: 'bath product' },
  { id: 'hand-wash', covers: 'hand wash, hand soap' },
  { id: 'face-wash', covers: 'face wash' },
  { id: 'soap', covers: 'soap' },
  { id: 'deodorant', covers: 'deodorant and antiperspirant of any form' },
  { id: 'roll-on-deodorant', covers: 'roll-on deodorant' },
  { id: 'deodorant-spray', covers: 'deodorant from a spray or aerosol' },
  { id: 'depilatory', covers: 'depilatory' },
  { id: 'nail-cuticle-solvent', covers: 'nail cuticle solvent' },
  { id: 'callus-softener', covers: 'callus softener or remover' },
  { id: 'toothpaste', covers: 'toothpaste' },
  { id: 'mouthwash', covers: 'mouthwash' },
  { id: 'mouth-spray', covers: 'mouth spray' },
  { id: 'sun-protection', covers: 'sun protection product' },
  { id: 'uv-exposure', covers: 'product marketed for exposure to natural or artificial UV light' },
  { id: 'bronzing', covers: 'bronzing product' },
];

export const restrictionConditions: readonly VocabularyWord<RestrictionCondition>[] = [
  { id: 'not-oral', covers: 'any product except oral products' },
  { id: 'used-as-fragrance', covers: 'when used as a fragrance ingredient' },
  { id: 'lung-exposure', covers: "the product may expose the user's lungs by inhalation" },
  { id: 'aerosol-spray', covers: 'filled in an aerosol dispenser' },
  { id: 'with-nitrosating-agents', covers: 'together with nitrosating agents' },
  { id: 'consumer-use', covers: 'for general use' },
  { id: 'professional-use', covers: 'for professional use' },
  { id: 'ph-adjuster', covers: 'used as a pH adjuster' },
  { id: 'intended-for-children', covers: 'made specifically for children; the entry gives no age' },
  { id: 'single-ester', covers: 'the limit for each ester used alone' },
  { id: 'ester-mixture', covers: 'the limit for the sum of a mixture of esters' },
  {
    id: 'released-formaldehyde-over-threshold',
    covers: "free formaldehyde in the product is above the market's threshold: the warning is then due",
  },
  { id: 'adults-iso-4730-no-spray', covers: 'adults only, oil to ISO 4730:2017, no spray' },
  {
    id: 'trace-avoidable-or-unsafe',
    covers: 'the trace is technically avoidable under good manufacturing practice, or not safe',
  },
];

export const restrictedSubstanceSources: readonly ReferenceSource[] = [
  {
    id: 'cosing3', title: 'European Commission cosmetic ingredient database: Annex III list, export 25 December 2025',
    where: 'European Commission, CosIng, Annex III', read: true,
  },
  {
    id: 'cosing2', title: 'European Commission cosmetic ingredient database: Annex II list, export 24 December 2025',
    where: 'European Commission, CosIng, Annex II', read: true,
  },
  {
    id: 'cosing5', title: 'European Commission cosmetic ingredient database: Annex V list, export of early 2024',
    where: 'European Commission, CosIng, Annex V', read: true,
  },
  {
    id: 'eu2026_78',
    title: 'Commission Regulation (EU) 2026/78 of 12 January 2026 (CMR substances, applies from 1 May 2026), as summarised in public notices',
    where: 'OJ L, 13.1.2026', read: true,
    note: 'Notices read, not the act itself: rows from here are read-secondary.',
  },
  {
    id: 'sccs1681',
    title: 'SCCS/1681/25, Scientific Opinion on Tea Tree Oil (preliminary 28 May 2025; final opinion published November 2025)',
    where: 'Scientific Committee on Consumer Safety', read: true,
  },
  {
    id: 'si2025_413',
    title: 'The Cosmetic Products (Restriction of Chemical Substances) Regulations 2025, SI 2025/413 (methyl salicylate, in force 30 September 2025; old stock until 31 March 2026)',
    where: 'legislation.gov.uk uksi/2025/413', read: true,
  },
  {
    id: 'gb2026',
    title: 'Great Britain 2026 instruments on hexyl salicylate, formaldehyde releasers, 4-MBC and CMR substances, as summarised in public notices',
    where: 'public notices, 2025-2026', read: true,
    note: 'Notices read, not the act itself: rows from here are read-secondary.',
  },
  {
    id: 'si2024_455',
    title: 'The Cosmetic Products (Restriction of Chemical Substances) Regulations 2024, SI 2024/455 (BHT), as described in trade notices',
    where: "trade association and consultants' notices, April 2024 to January 2025", read: false,
  },
  {
    id: 'si2023_836',
    title: 'The Cosmetic Products (Restriction of Chemical Substances) Regulations 2023, SI 2023/836 (methyl-N-methylanthranilate), as described in trade notices',
    where: "consultants' notices, July 2023", read: false,
  },
  {
    id: 'reg1223', title: 'Regulation (EC) No 1223/2009, Annex V entry 56, text of 22 December 2009 in a public copy',
    where: 'OJ L 342, 22.12.2009', read: false,
  },
  { id: 'memory', title: 'From memory, not confirmed in a printed text', where: 'not seen in print', read: false },
];
