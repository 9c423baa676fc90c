/** Label rules of the United States: 21 CFR Part 701, 21 USC 364h and MoCRA, as read in public summaries. */
import type { LabelRule } from '../label-rule.ts';
import type { Band, ReferenceSource, SourcedRow } from '../sourced-row.ts';

/** Smallest type height of the net contents by area of the principal display panel. */
export interface PanelFigureHeightRow extends SourcedRow {
  readonly panelSquareInch: Band;
  readonly minHeightInch: number;
}

export const usLabelRules: readonly LabelRule[] = [
  {
    id: 'us-identity', markets: ['US'], element: 'statement-of-identity',
    rule: 'Statement of identity on the principal display panel.', source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-name', markets: ['US'], element: 'name-and-place',
    rule: "Name and place of business (street, city, state, ZIP; street may be left out if in a current directory); 'Manufactured for' or 'Distributed by' if not the maker.",
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'us-ingredient-order', markets: ['US'], element: 'ingredients',
    rule: 'Descending order of predominance; fragrance and flavor may be listed as such (21 CFR 701.3(a)).',
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-ingredient-1pct', markets: ['US'], element: 'ingredients',
    rule: 'Option (701.3(f)): ingredients above 1 % in descending order, then those of 1 % or less in any order, then colour additives in any order.',
    thresholdPercent: 1, freeWhen: 'at-most',
    note: "Boundary differs from the EU: here 'not exceeding 1 %' is free, in the EU 'less than 1 %'. Boundary wording from memory; colour additives 'in any order after the other ingredients' read.",
    source: 'cfr701', confidence: 'read', evidence: { freeWhen: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'us-incidental', markets: ['US'], element: 'ingredients',
    rule: "Incidental ingredients (processing aids, insignificant carry-over) need not be declared; trade-secret ingredients accepted by the FDA appear as 'and other ingredients'.",
    note: 'Second half from memory.', source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-ingredient-letter', markets: ['US'], element: 'ingredients',
    rule: 'Letter height at least 1/16 inch (lower-case o); 1/32 inch if the total surface available for labelling is below 12 square inches.',
    minHeightInch: 0.0625, smallPanelMinHeightInch: 0.03125, smallPanelSquareInch: 12, source: 'cfr701',
    confidence: 'read',
  },
  {
    id: 'us-ingredient-place', markets: ['US'], element: 'ingredients',
    rule: 'The declaration stands on an information panel of the package, or on a tag, tape or card firmly affixed to it, where the package is a decorative container or too small (701.3(b)).',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'us-ingredient-off-package', markets: ['US'], element: 'ingredients',
    rule: 'Off the package only where its surface is below 12 square inches, it stands without outer carton in a compartmented tray or rack of a display, and the declaration is on the display or on padded sheets or leaflets held with it, enough for each purchaser (701.3(i)).',
    smallPanelSquareInch: 12,
    note: "That padded sheets or leaflets must be enough for each purchaser, and the words 'Federal law requires ingredient lists to be displayed here', were read in quotations of the agency's labelling manual; the other conditions are from memory.",
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'us-ingredient-mail', markets: ['US'], element: 'ingredients',
    rule: 'Sold by direct mail order, the declaration may stand in labelling that goes with the parcel or in the catalogue, with a statement where it is found (701.3(r)).',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'us-net-place', markets: ['US'], element: 'net-contents',
    rule: "In the bottom 30 % of the principal display panel, parallel to the base; in an outer carton also on the inner container's information panel.",
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-net-type', markets: ['US'], element: 'net-contents',
    rule: 'Minimum type height by area of the principal display panel (square inches).',
    note: 'First three bands and the over-100 band read in summaries; 400 square inches step from memory. Add 1/16 inch if blown, formed or moulded on glass or plastic (memory).',
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-pdp-area', markets: ['US'], element: 'net-contents',
    rule: 'Panel area: rectangular = height x width of the front; cylinder = 40 % of height x circumference; other = 40 % of the total surface, leaving out tops, bottoms, flanges, shoulders, necks.',
    note: "'Other' from memory.", source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-net-units', markets: ['US'], element: 'net-contents',
    rule: "US customary and metric both. Solids, semi-solids, viscous and mixtures by weight: 'Net Wt. 4 oz (113 g)'; liquids by fluid measure: '8 fl oz (236 mL)'. Fractions or decimals (decimals at most two places).",
    note: 'Metric duty is the 1992 FPLA amendment (15 USC 1453; memory).', source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-net-dual', markets: ['US'], element: 'net-contents',
    rule: "From 1 lb (summaries: more than 1 lb) and below 4 lb (or 1 pint to below 1 gallon): total ounces, then in parentheses pounds and ounces (or pints/quarts), e.g. 'Net Wt. 20 oz (1 lb 4 oz) 567 g'.",
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-conversion', markets: ['US'], element: 'net-contents',
    rule: '1 oz avoirdupois = 28.349523125 g; 1 US fl oz = 29.5735295625 mL; 1 lb = 453.59237 g. Metric rounding must not overstate the content.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'us-small-business', markets: ['US'], element: 'mocra',
    rule: 'Average yearly US cosmetic sales of the previous 3 years below 1,000,000 USD (adjusted for inflation): not subject to good manufacturing practice (21 USC 364b) nor registration and listing (364c). Not available for products that touch the mucous membrane of the eye, are injected, for internal use, or change appearance for more than 24 hours without being removed by the consumer.',
    thresholdUsd: 1_000_000, thresholdComparison: 'below', source: 'usc364h', confidence: 'read',
  },
  {
    id: 'us-always', markets: ['US'], element: 'mocra',
    rule: 'No exemption from: safety substantiation, serious adverse event reports, records, labelling, misbranding and adulteration rules.',
    source: 'usc364h', confidence: 'read',
  },
  {
    id: 'us-contact', markets: ['US'], element: 'mocra',
    rule: 'Label carries a domestic address, domestic phone number or electronic contact (may be a website) for adverse event reports.',
    from: '2024-12-29', note: 'Date from memory.', source: 'mocra-ae', confidence: 'read',
    evidence: { from: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'us-sae', markets: ['US'], element: 'mocra',
    rule: 'Serious adverse event report to the FDA within 15 business days; new medical information within a year likewise. Records 6 years, small businesses 3 years.',
    businessDays: 15, keepYears: 6, keepYearsSmallBusiness: 3, source: 'mocra-ae', confidence: 'read',
  },
  {
    id: 'us-allergens', markets: ['US'], element: 'ingredients',
    rule: 'No federal list or duty to name fragrance allergens in force: the proposed rule (statutory date 29 June 2024) was still awaited, planned for May 2026; publication was not found.',
    source: 'reginfo', confidence: 'read',
  },
  {
    id: 'us-professional', markets: ['US'], element: 'label',
    rule: "Products for licensed professionals: 'for professional use only' and the full label.", source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'us-soap', markets: ['US'], element: 'scope',
    rule: "'Soap' is outside the cosmetic definition (21 USC 321(i)) if mainly alkali salts of fatty acids, cleaning because of them, and sold only as soap (21 CFR 701.20). A moisturising or scented-care claim makes it a cosmetic.",
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'us-warning', markets: ['US'], element: 'warnings',
    rule: 'Product whose safety is not substantiated needs a warning (21 CFR 740.10); bubble bath, feminine spray, aerosol have fixed warnings.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'us-states', markets: ['US'], element: 'states',
    rule: 'State laws add duties (California fragrance ingredient reporting, Proposition 65, ingredient bans from 2025; Washington formaldehyde-releaser limits).',
    source: 'memory', confidence: 'memory',
  },
];

export const usPanelFigureHeights: readonly PanelFigureHeightRow[] = [
  {
    id: 'us-figures-over-0-square-inch', panelSquareInch: { over: 0, upTo: 5 }, minHeightInch: 0.0625,
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-figures-over-5-square-inch', panelSquareInch: { over: 5, upTo: 25 }, minHeightInch: 0.125,
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-figures-over-25-square-inch', panelSquareInch: { over: 25, upTo: 100 }, minHeightInch: 0.1875,
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-figures-over-100-square-inch', panelSquareInch: { over: 100, upTo: 400 }, minHeightInch: 0.25,
    source: 'cfr701', confidence: 'read',
  },
  {
    id: 'us-figures-over-400-square-inch', panelSquareInch: { over: 400, upTo: null }, minHeightInch: 0.5,
    source: 'cfr701', confidence: 'memory',
  },
];

export const usLabelRuleSources: readonly ReferenceSource[] = [
  {
    id: 'cfr701', title: '21 CFR Part 701 (701.3, 701.13), partial quotations and FDA-based summaries',
    where: 'public summaries and quotations', read: true,
  },
  { id: 'usc364h', title: '21 USC 364h, small businesses', where: 'uscode.house.gov', read: true },
  {
    id: 'mocra-ae', title: 'MoCRA section 605 and label contact, Society of Cosmetic Chemists and trade summaries',
    where: 'scconline.org', read: true,
  },
  {
    id: 'reginfo',
    title: 'Unified Agenda RIN 0910-AI90, Disclosure of Fragrance Allergens in Cosmetic Labeling (Spring 2025; later agenda as reported in 2026)',
    where: 'reginfo.gov', read: true,
  },
  { id: 'memory', title: 'From memory, not confirmed in a printed text', where: 'not seen in print', read: false },
];
