/**
 * What must stand on container and packaging, on the notification and in the product file of a cosmetic product:
 * Regulation (EC) No 1223/2009 with the rules of Northern Ireland and Great Britain beside it.
 * The heights of the quantity figures stand in figure-heights-76-211, tolerable errors in tolerable-errors-76-211.
 */
import type { LabelRule } from '../label-rule.ts';
import type { ReferenceSource } from '../sourced-row.ts';

export const labelRules: readonly LabelRule[] = [
  {
    id: 'lettering', markets: ['EU', 'NI', 'GB'], element: 'all',
    rule: 'Indelible, easily legible and visible lettering on container and packaging. No minimum letter height in cosmetics law (only the net quantity figures have one).',
    onContainer: true, onPackaging: true, source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'responsible-person', markets: ['EU', 'NI', 'GB'], element: 'responsible-person',
    rule: 'Name or registered name and address of the Responsible Person; may be abbreviated if person and address can still be identified; with several addresses highlight (e.g. underline) the one where the product information file is kept.',
    onContainer: true, onPackaging: true, order: 1, source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'rp-established', markets: ['EU', 'NI'], element: 'responsible-person',
    rule: 'EU and Northern Ireland: the Responsible Person is established in the EU or Northern Ireland. A UK (GB) address alone is not enough for the EU.',
    onContainer: true, onPackaging: true, source: 'gb-notices', confidence: 'read',
  },
  {
    id: 'rp-gb', markets: ['GB'], element: 'responsible-person',
    rule: "Great Britain: a UK-based Responsible Person is required now. Until 31 December 2027 the label may carry only the EU Responsible Person's details; after that the UK details must be on it.",
    onContainer: true, onPackaging: true, until: '2027-12-31', source: 'gb-notices', confidence: 'read',
  },
  {
    id: 'country-of-origin', markets: ['EU', 'NI', 'GB'], element: 'country-of-origin',
    rule: 'Country of origin for imported products only.', onContainer: true, onPackaging: true, order: 2,
    source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'nominal-content', markets: ['EU', 'NI', 'GB'], element: 'nominal-content',
    rule: 'Nominal content at the time of packaging by weight or by volume.', onContainer: true, onPackaging: true,
    order: 3,
    exemptions: [
      'less than 5 g or 5 ml', 'free samples', 'single-application packs',
      'pre-packages normally sold as a number of items where weight or volume is not significant, if the number is on the packaging (the number itself is not needed if easily seen from outside or if normally sold singly)',
    ],
    source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'nominal-units', markets: ['EU', 'NI', 'GB'], element: 'nominal-content',
    rule: 'Solids, butters, balms, scrubs, soap by weight (g, kg); liquids by volume (ml, l). Imperial only as an addition.',
    onContainer: true, onPackaging: true, source: 'memory', confidence: 'memory',
  },
  {
    id: 'net-figures-height', markets: ['EU', 'NI', 'GB'], element: 'nominal-content',
    rule: 'Minimum height of the net quantity figures by nominal quantity (g or ml).',
    note: 'Up to and including the upper bound. Directive 76/211/EEC Annex I 3.1; same bands in UK law (1987 Quantity Marking Regulations; memory). Confirmed by a US government summary of the directive.',
    source: 'fpackv', alsoSources: ['fr-arr-1978', 'eu-76-211'], confidence: 'read',
  },
  {
    id: 'e-mark', markets: ['EU', 'NI', 'GB'], element: 'e-mark',
    rule: 'The e-mark is optional. If used: small letter e in the prescribed shape, at least 3 mm high, in the same field of vision as the nominal quantity; only for packages of 5 g/5 ml to 10 kg/10 l packed under the average system with the checks.',
    minHeightMm: 3, note: '3 mm read in SI 2006/659 and for the directive; range and field of vision from memory.',
    source: 'uk-2006-659', alsoSources: ['fr-arr-1978'], confidence: 'read',
  },
  {
    id: 'average-system', markets: ['EU', 'NI', 'GB'], element: 'quantity-control',
    rule: "Three packers' rules: average not below nominal; at most 2.5 % of packages short by more than the tolerable negative error (TNE); none short by more than 2 x TNE. Or pack to minimum: never less than stated. Applies to packages from 5 g/ml to 25 kg/l in GB.",
    source: 'uk-2006-659', confidence: 'read',
  },
  {
    id: 'durability-date', markets: ['EU', 'NI', 'GB'], element: 'minimum-durability',
    rule: "Minimum durability of 30 months or less: date, after the hourglass symbol (Annex VII point 3) or the words 'best used before the end of' (in the national language), as month and year or day, month and year, or where the date stands; with storage conditions if needed.",
    onContainer: true, onPackaging: true, order: 4,
    note: 'Symbol detail and date form confirmed in the older UK text and labelling guides.',
    source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'pao', markets: ['EU', 'NI', 'GB'], element: 'period-after-opening',
    rule: "Minimum durability over 30 months: no date needed; instead the open-jar symbol (Annex VII point 2) with the period in months and/or years, e.g. '12 M'. Not needed where durability after opening is not relevant (single use, packs that cannot be opened, no risk of deterioration).",
    onContainer: true, onPackaging: true, order: 4, thresholdMonths: 30, thresholdComparison: 'over',
    note: "Exactly 30 months is not 'more than 30': date required. Exceptions from memory.", source: 'eu-1223-art-19',
    confidence: 'read',
  },
  {
    id: 'precautions', markets: ['EU', 'NI', 'GB'], element: 'precautions',
    rule: 'Particular precautions in use, at least those of Annexes III to VI, and for professional products.',
    onContainer: true, onPackaging: true, order: 5, source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'batch', markets: ['EU', 'NI', 'GB'], element: 'batch-number',
    rule: 'Batch number or reference that identifies the product. If the container is too small: on the packaging only.',
    onContainer: true, onPackaging: true, order: 6, source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'function', markets: ['EU', 'NI', 'GB'], element: 'function',
    rule: 'Function of the product unless clear from its presentation.', onContainer: true, onPackaging: true,
    order: 7, source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'ingredients', markets: ['EU', 'NI', 'GB'], element: 'ingredients',
    rule: "List headed 'Ingredients'; may stand on the packaging alone (without outer packaging: on the container).",
    onContainer: false, onPackaging: true, order: 8, source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'ingredient-order', markets: ['EU', 'NI', 'GB'], element: 'ingredients',
    rule: 'Descending order of weight at the time of addition; ingredients below 1 % in any order after those of 1 % and more.',
    thresholdPercent: 1, freeWhen: 'below',
    note: "An ingredient of exactly 1 % belongs to the ordered part ('less than 1 %' is free).",
    source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'ingredient-colour', markets: ['EU', 'NI', 'GB'], element: 'ingredients',
    rule: "Colourants (not hair dyes) in any order after the other ingredients, by CI number where one exists; for shade ranges all colourants may be listed after 'may contain' or '+/-'.",
    note: 'Applies to decorative cosmetics in several shades.', source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'ingredient-parfum', markets: ['EU', 'NI', 'GB'], element: 'ingredients',
    rule: "Perfume and aromatic compositions and their raw materials as 'Parfum' or 'Aroma'; Annex III allergens above threshold named in addition.",
    thresholdLeaveOnPercent: 0.001, thresholdRinseOffPercent: 0.01, thresholdComparison: 'over',
    source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'ingredient-nano', markets: ['EU', 'NI', 'GB'], element: 'ingredients',
    rule: "Nanomaterial: name followed by '(nano)'.", source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'ingredient-not', markets: ['EU', 'NI', 'GB'], element: 'ingredients',
    rule: 'Not ingredients: impurities in raw materials; subsidiary technical materials used in the mixture but not in the final product.',
    note: 'Water that evaporates fully and lye that is fully consumed are handled as technical aids in practice (memory).',
    source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'ingredient-names-eu', markets: ['EU', 'NI'], element: 'ingredients',
    rule: 'Common ingredient name of the glossary in force (Implementing Decision (EU) 2025/1175, which repealed 2022/677).',
    source: 'eu-2025-1175', confidence: 'read',
  },
  {
    id: 'leaflet', markets: ['EU', 'NI', 'GB'], element: 'leaflet',
    rule: 'If it is impossible for practical reasons to label the precautions (d) and the ingredients (g): on an enclosed or attached leaflet, label, tape, tag or card. Unless impractical, refer to it by short words or by the hand-in-book symbol (Annex VII point 1), on container or packaging for precautions, on the packaging for ingredients. No other element may move there.',
    movableElements: ['precautions', 'ingredients'], source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'notice-small', markets: ['EU', 'NI', 'GB'], element: 'leaflet',
    rule: 'Soap, bath balls and other small products where even a tag or leaflet is impractical: the ingredient list may stand on a notice in immediate proximity to the container in which the product is displayed for sale.',
    movableElements: ['ingredients'], source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'loose-goods', markets: ['EU', 'NI', 'GB'], element: 'leaflet',
    rule: "Goods not pre-packed, packed at the point of sale at the buyer's request, or pre-packed for immediate sale: national rules.",
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'language', markets: ['EU', 'NI'], element: 'language',
    rule: 'Nominal content, durability, precautions, function and leaflet/notice texts in the language(s) set by the Member State of sale. Ingredients are not translated.',
    elements: ['nominal-content', 'minimum-durability', 'precautions', 'function'], source: 'eu-1223-art-19',
    confidence: 'read',
  },
  {
    id: 'language-gb', markets: ['GB'], element: 'language', rule: 'Great Britain and Northern Ireland: English.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'allergen-eu-dates', markets: ['EU', 'NI'], element: 'ingredients',
    rule: 'New allergens must be named on products placed on the market after 31 July 2026; older stock without them may be made available until 31 July 2028.',
    requiredForPlacingFrom: '2026-08-01', requiredForMakingAvailableFrom: '2028-08-01', source: 'eu-2023-1545',
    confidence: 'read',
  },
  {
    id: 'allergen-gb', markets: ['GB'], element: 'ingredients',
    rule: 'Great Britain: only the first list (24 names) must be named; naming more is allowed.',
    source: 'gb-notices', confidence: 'read',
  },
  {
    id: 'claims', markets: ['EU', 'NI'], element: 'claims',
    rule: "Claims must meet the common criteria of Regulation (EU) No 655/2013: legal compliance, truthfulness, evidence, honesty, fairness, informed decisions. 'Cruelty free'-type and 'free from' claims need care.",
    note: 'The six criteria were read; cautions from memory.', source: 'eu-655-2013', confidence: 'read',
  },
  {
    id: 'green-claims', markets: ['EU', 'NI'], element: 'claims',
    rule: 'Directive (EU) 2024/825 applies from 27 September 2026: generic environmental claims without recognised proof and unofficial sustainability labels are banned in consumer sales.',
    from: '2026-09-27', source: 'memory', confidence: 'memory',
  },
  {
    id: 'notification-eu', markets: ['EU', 'NI'], element: 'notification',
    rule: 'Notify on the EU portal (CPNP, Article 13) before first placing on the market; keep up to date.',
    source: 'notif', confidence: 'read',
  },
  {
    id: 'notification-gb', markets: ['GB'], element: 'notification',
    rule: 'Notify the Secretary of State on the GB service (SCPN) before placing on the GB market; separate from the EU notification; no transfer between them.',
    source: 'notif', confidence: 'read',
  },
  {
    id: 'cpsr-a1', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Quantitative and qualitative composition of the cosmetic product', number: 1, source: 'eu-1223-annex-1',
    confidence: 'read',
  },
  {
    id: 'cpsr-a2', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Physical/chemical characteristics and stability of the cosmetic product', number: 2,
    source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-a3', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a', rule: 'Microbiological quality',
    number: 3, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-a4', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Impurities, traces, information about the packaging material', number: 4, source: 'eu-1223-annex-1',
    confidence: 'read',
  },
  {
    id: 'cpsr-a5', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Normal and reasonably foreseeable use', number: 5, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-a6', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Exposure to the cosmetic product', number: 6, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-a7', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a', rule: 'Exposure to the substances',
    number: 7, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-a8', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Toxicological profile of the substances', number: 8, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-a9', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Undesirable effects and serious undesirable effects', number: 9, source: 'eu-1223-annex-1',
    confidence: 'read',
  },
  {
    id: 'cpsr-a10', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Information on the cosmetic product', number: 10, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-b1', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-b', rule: 'Assessment conclusion',
    number: 1, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-b2', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-b',
    rule: 'Labelled warnings and instructions of use', number: 2, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-b3', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-b', rule: 'Reasoning', number: 3,
    source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-b4', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-b',
    rule: "Assessor's credentials and approval of part B", number: 4, source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'cpsr-composition', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-a',
    rule: 'Section 1 needs per substance: chemical name, INCI, CAS, EINECS/ELINCS where possible, and function; for perfumes the name and code number of the composition and the supplier.',
    source: 'eu-1223-annex-1', confidence: 'read',
  },
  {
    id: 'assessor', markets: ['EU', 'NI', 'GB'], element: 'safety-report-part-b',
    rule: 'Part B is done by a person with a university qualification in pharmacy, toxicology, medicine or a similar discipline (or recognised as equivalent).',
    source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'pif-1', markets: ['EU', 'NI', 'GB'], element: 'product-information-file',
    rule: 'description of the product so that the file is clearly attributed to it', number: 1,
    source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'pif-2', markets: ['EU', 'NI', 'GB'], element: 'product-information-file',
    rule: 'safety report (Annex I, parts A and B)', number: 2, source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'pif-3', markets: ['EU', 'NI', 'GB'], element: 'product-information-file',
    rule: 'description of the method of manufacturing and statement of good manufacturing practice', number: 3,
    source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'pif-4', markets: ['EU', 'NI', 'GB'], element: 'product-information-file',
    rule: 'proof of the effect claimed, where justified', number: 4, source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'pif-5', markets: ['EU', 'NI', 'GB'], element: 'product-information-file',
    rule: 'data on animal testing by the maker, agents or suppliers, including for third countries', number: 5,
    source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'pif-retention', markets: ['EU', 'NI', 'GB'], element: 'product-information-file',
    rule: 'Keep the file 10 years after the last batch was placed on the market, at the label address, electronic or other form.',
    keepYears: 10, source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'gmp', markets: ['EU', 'NI', 'GB'], element: 'gmp',
    rule: 'Good manufacturing practice (Article 8); following EN ISO 22716 gives the presumption of it.',
    note: 'Batch records, raw material lots, cleaning, deviations, retained samples are ISO 22716 subjects (memory).',
    source: 'eu-1223-art-11', confidence: 'read',
  },
  {
    id: 'trace', markets: ['EU', 'NI', 'GB'], element: 'traceability',
    rule: 'Identify distributors supplied (and on request the supply chain) for 3 years after the batch was made available (Article 7).',
    keepYears: 3, source: 'memory', confidence: 'memory',
  },
  {
    id: 'sue-eu', markets: ['EU', 'NI'], element: 'undesirable-effects',
    rule: "Serious undesirable effects: Responsible Person and distributors notify the authority of the Member State where it happened without delay, with product name and corrective measures. EU guidelines read 'without delay' as within 20 calendar days.",
    days: 20, note: '20 days from memory.', source: 'eu-1223-art-23', confidence: 'read',
    evidence: { days: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'sue-gb', markets: ['GB'], element: 'undesirable-effects',
    rule: 'Serious undesirable effects: Responsible Person and distributors notify the Secretary of State without delay, with product name and corrective measures.',
    source: 'gb-1223-art-23', confidence: 'read',
  },
  {
    id: 'sue-def', markets: ['EU', 'NI', 'GB'], element: 'undesirable-effects',
    rule: 'Serious = temporary or permanent functional incapacity, disability, hospitalisation, congenital anomalies, immediate vital risk or death. Every other undesirable effect is recorded and fed into the safety report.',
    source: 'eu-1223-art-23', confidence: 'read',
  },
];

export const labelRuleSources: readonly ReferenceSource[] = [
  {
    id: 'eu-1223-art-19',
    title: 'Regulation (EC) No 1223/2009, Article 19, as set out by national authorities (Austria AGES, Cyprus Ministry of Health, Irish trade body) and labelling guides',
    where: 'public authority pages', read: true,
  },
  {
    id: 'eu-1223-annex-1', title: 'Regulation (EC) No 1223/2009, Annex I',
    where: 'legislation.gov.uk eur/2009/1223/annex/I', read: true,
  },
  {
    id: 'eu-1223-art-11',
    title: 'Regulation (EC) No 1223/2009, Article 11, as set out by the Slovenian authority; Chapter III text',
    where: 'uk.gov.si; legislation.gov.uk eur/2009/1223/chapter/III', read: true,
  },
  {
    id: 'gb-1223-art-23', title: 'Regulation (EC) No 1223/2009 as it applies in Great Britain, Article 23',
    where: 'legislation.gov.uk eur/2009/1223/article/23', read: true,
  },
  {
    id: 'eu-1223-art-23',
    title: 'Regulation (EC) No 1223/2009, Article 23, as set out by the Finnish authority and trade body',
    where: 'tukes.fi; ctpa.org.uk', read: true,
  },
  {
    id: 'gb-notices',
    title: 'UK notices on the responsible person label transition to 31 December 2027 and on the fragrance allergens',
    where: 'public notices, 2023-2026', read: true,
  },
  {
    id: 'eu-2023-1545', title: 'Commission Regulation (EU) 2023/1545', where: 'OJ L 188, 27.7.2023, p. 1', read: true,
  },
  {
    id: 'eu-76-211',
    title: 'Council Directive 76/211/EEC, figures height and e-mark, as summarised by the US mission to the EU',
    where: 'usda-eu.org', read: true,
  },
  {
    id: 'fpackv',
    title: 'German Fertigpackungsverordnung, sections 9 and 38 (same tables as Directive 76/211/EEC, with exact bands)',
    where: 'German federal law text', read: true,
  },
  {
    id: 'uk-2006-659',
    title: "The Weights and Measures (Packaged Goods) Regulations 2006, SI 2006/659 (reg. 2: E-mark at least 3 mm high) and GOV.UK pages on packaged goods (three packers' rules, tolerable negative error table)",
    where: 'legislation.gov.uk uksi/2006/659; gov.uk', read: true,
  },
  {
    id: 'eu-2025-1175', title: 'Commission Implementing Decision (EU) 2025/1175 (glossary)',
    where: 'Official Journal of the European Union, 2025', read: true,
  },
  {
    id: 'eu-655-2013',
    title: 'Commission Regulation (EU) No 655/2013, six common criteria for claims, as listed in public guidance',
    where: 'public guidance', read: true,
  },
  {
    id: 'notif', title: 'Public comparison of the EU (CPNP, Article 13) and Great Britain (SCPN) notification duties',
    where: 'public notices', read: true,
  },
  { id: 'memory', title: 'From memory, not confirmed in a printed text', where: 'not seen in print', read: false },
  {
    id: 'fr-arr-1978', title: 'Arrete du 20 octobre 1978 (preemballages), articles 1, 2, 8, 10, 11',
    where: 'legifrance.gouv.fr', read: true,
  },
];
