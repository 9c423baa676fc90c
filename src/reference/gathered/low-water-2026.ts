/**
 * Products with little or no water: when they are microbiologically low-risk (criteria of ISO 29621:2017 as a test
 * laboratory lists them), at which water activity organisms grow, and levels of antioxidants and starch that makers use.
 * No authority sets the levels; they come from secondary pages. Peroxide limits that law sets stand with the restricted
 * substances; where both name one, those decide.
 */
import type { Evidence, ReferenceSource, SourcedRow } from '../sourced-row.ts';

/** A product that meets one is low-risk by the standard. */
export interface LowRiskCriterion extends SourcedRow {
  readonly quantity:
    | 'ph'
    | 'anhydrous'
    | 'ethanolPercent'
    | 'fillingTemperatureCelsius'
    | 'waterActivity'
    | 'organicSolventBased'
    | 'oxidising'
    | 'aluminiumChlorohydratePercent';
  readonly operator: '<' | '>' | 'is';
  readonly value: number | boolean;
  /** What the standard itself says, as remembered. */
  readonly rememberedOperator?: '<=' | '>=';
  readonly consequence: string;
  readonly note?: string;
}

export interface LowWaterRule extends SourcedRow {
  readonly text: string;
}

/** Least water activity at which organisms grow. */
export interface GrowthLimit extends SourcedRow {
  readonly organism: string;
  readonly minWaterActivity: number;
}

/** Water activity over a solution, at 25 degrees Celsius; `percent` absent: saturated. */
export interface SolutionActivity extends SourcedRow {
  readonly substance: string;
  readonly percent?: number;
  readonly waterActivityAt25Celsius: number;
  readonly note?: string;
}

/** What a workshop makes, with the reading of the criteria for it: a judgement, not the standard's. */
export interface LowWaterProductClass extends SourcedRow {
  readonly makerProduct: string;
  readonly lowRisk: 'yes' | 'no' | 'doubtful';
  readonly criterionId?: string;
  readonly preservativeNeeded: boolean;
  readonly isJudgement: boolean;
  readonly note?: string;
}

export interface MicroLimit extends SourcedRow {
  readonly name: string;
  readonly maxCfuPerGramOrMl?: number;
  readonly absentInGramsOrMl?: number;
  readonly note?: string;
}

/** Evidence of one value, with a word on how it came about. */
type NotedEvidence = Evidence & { readonly note?: string };

/** Levels in percent by mass of what `use` names. */
export interface UsageLevel extends SourcedRow {
  readonly name: string;
  readonly use: string;
  readonly minPercent?: number;
  readonly typicalPercent?: number;
  readonly maxPercent?: number;
  readonly text?: string;
  readonly note?: string;
  readonly evidence?: Readonly<Record<string, NotedEvidence>>;
}

export interface PeroxideLevel extends SourcedRow {
  readonly name: string;
  readonly scope: 'raw-material';
  readonly comparison: 'below' | 'at-most';
  readonly maxMmolPerLitre?: number;
  readonly densityGramsPerMl?: number;
  readonly maxMeqPerKg?: number;
  readonly note?: string;
}

export interface PeroxideConversion extends SourcedRow {
  readonly name: string;
  readonly formula: string;
  readonly note?: string;
}

export const lowRiskCriteria: readonly LowRiskCriterion[] = [
  {
    id: 'ph-low', quantity: 'ph', operator: '<', value: 3, rememberedOperator: '<=',
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    source: 'laboratory-faq', confidence: 'read',
    evidence: { rememberedOperator: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'ph-high', quantity: 'ph', operator: '>', value: 10, rememberedOperator: '>=',
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    source: 'laboratory-faq', confidence: 'read',
    evidence: { rememberedOperator: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'anhydrous', quantity: 'anhydrous', operator: 'is', value: true,
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    note: 'no water phase and none can enter in use (memory)', source: 'laboratory-faq', confidence: 'read',
  },
  {
    id: 'alcohol', quantity: 'ethanolPercent', operator: '>', value: 20, rememberedOperator: '>=',
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    note: 'Percent by volume, as remembered.', source: 'laboratory-faq', confidence: 'read',
    evidence: { rememberedOperator: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'fill-temperature', quantity: 'fillingTemperatureCelsius', operator: '>', value: 65,
    rememberedOperator: '>=',
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    source: 'laboratory-faq', confidence: 'read',
    evidence: { rememberedOperator: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'water-activity', quantity: 'waterActivity', operator: '<', value: 0.75, rememberedOperator: '<=',
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    source: 'laboratory-faq', confidence: 'read',
    evidence: { rememberedOperator: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'solvent', quantity: 'organicSolventBased', operator: 'is', value: true,
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    note: 'e.g. nail varnish (memory)', source: 'laboratory-faq', confidence: 'read',
  },
  {
    id: 'oxidising', quantity: 'oxidising', operator: 'is', value: true,
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    note: 'e.g. hair lightener (memory)', source: 'laboratory-faq', confidence: 'read',
  },
  {
    id: 'aluminium', quantity: 'aluminiumChlorohydratePercent', operator: '>', value: 25, rememberedOperator: '>=',
    consequence: 'no preservative efficacy (challenge) test needed; microbiological end-product testing may be reduced; the reasoning is written into the safety report',
    source: 'laboratory-faq', confidence: 'read',
    evidence: { rememberedOperator: { source: 'memory', confidence: 'memory' } },
  },
];

export const lowWaterRules: readonly LowWaterRule[] = [
  {
    id: 'rule-document',
    text: 'Low risk is a claim the maker must justify on paper (composition, process, pack, use); the standard does not free the product from hygiene in manufacture.',
    source: 'consultant-low-risk', confidence: 'read',
  },
  {
    id: 'rule-scope',
    text: 'ISO 29621 is a risk-assessment guide for finished products; it says when tests can be left out, not that a product is clean.',
    source: 'iso-29621', confidence: 'read',
  },
];

export const growthLimits: readonly GrowthLimit[] = [
  {
    id: 'growth-pseudomonas-e-coli-bacillus-most', organism: 'Pseudomonas, E. coli, Bacillus (most)',
    minWaterActivity: 0.95, source: 'beuchat', confidence: 'read',
  },
  {
    id: 'growth-pseudomonas-fluorescens', organism: 'Pseudomonas fluorescens', minWaterActivity: 0.97,
    source: 'selfpres', confidence: 'read',
  },
  {
    id: 'growth-escherichia-coli', organism: 'Escherichia coli', minWaterActivity: 0.95, source: 'selfpres',
    confidence: 'read',
  },
  {
    id: 'growth-bacillus-cereus', organism: 'Bacillus cereus', minWaterActivity: 0.95, source: 'selfpres',
    confidence: 'read',
  },
  {
    id: 'growth-bacillus-subtilis', organism: 'Bacillus subtilis', minWaterActivity: 0.9, source: 'selfpres',
    confidence: 'read',
  },
  {
    id: 'growth-salmonella-lactobacillus-some-moulds', organism: 'Salmonella, Lactobacillus, some moulds',
    minWaterActivity: 0.91, source: 'beuchat', confidence: 'read',
  },
  {
    id: 'growth-most-bacteria', organism: 'most bacteria', minWaterActivity: 0.91, source: 'pmc7150035',
    confidence: 'read',
  },
  {
    id: 'growth-most-bacteria-second-source', organism: 'most bacteria (second source)', minWaterActivity: 0.9,
    source: 'selfpres', confidence: 'read',
  },
  {
    id: 'growth-most-yeasts', organism: 'most yeasts', minWaterActivity: 0.88, source: 'pmc7150035',
    confidence: 'read',
  },
  {
    id: 'growth-many-yeasts-candida', organism: 'many yeasts, Candida', minWaterActivity: 0.87, source: 'beuchat',
    confidence: 'read',
  },
  {
    id: 'growth-staphylococcus-aureus', organism: 'Staphylococcus aureus', minWaterActivity: 0.86,
    source: 'selfpres', confidence: 'read',
  },
  {
    id: 'growth-most-moulds', organism: 'most moulds', minWaterActivity: 0.8, source: 'pmc7150035',
    confidence: 'read',
  },
  {
    id: 'growth-most-moulds-s-aureus-grouped-here', organism: 'most moulds; S. aureus grouped here',
    minWaterActivity: 0.8, source: 'beuchat', confidence: 'read',
  },
  {
    id: 'growth-mycotoxin-forming-moulds', organism: 'mycotoxin-forming moulds', minWaterActivity: 0.78,
    source: 'pmc7150035', confidence: 'read',
  },
  {
    id: 'growth-halophilic-bacteria-mycotoxin-forming-aspergilli',
    organism: 'halophilic bacteria; mycotoxin-forming aspergilli', minWaterActivity: 0.75, source: 'beuchat',
    confidence: 'read',
  },
  {
    id: 'growth-halophilic-bacteria', organism: 'halophilic bacteria', minWaterActivity: 0.75, source: 'pmc7150035',
    confidence: 'read',
  },
  {
    id: 'growth-xerophilic-moulds', organism: 'xerophilic moulds', minWaterActivity: 0.65, source: 'pmc7150035',
    confidence: 'read',
  },
  {
    id: 'growth-osmophilic-yeasts', organism: 'osmophilic yeasts', minWaterActivity: 0.6, source: 'pmc7150035',
    confidence: 'read',
  },
  {
    id: 'growth-no-growth-of-anything-below', organism: 'no growth of anything below', minWaterActivity: 0.6,
    source: 'beuchat', confidence: 'read',
  },
];

export const solutionActivities: readonly SolutionActivity[] = [
  {
    id: 'saturated-solution-sodium-chloride', substance: 'sodium chloride (table and sea salt)',
    waterActivityAt25Celsius: 0.753, note: 'just ABOVE the 0.75 limit', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saturated-solution-sucrose', substance: 'sucrose (white sugar)', waterActivityAt25Celsius: 0.85,
    note: 'far above 0.75: moulds and yeasts can grow', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saturated-solution-magnesium-sulfate-heptahydrate',
    substance: 'magnesium sulfate heptahydrate (Epsom salt)', waterActivityAt25Celsius: 0.9,
    note: 'roughly; does not protect', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saturated-solution-magnesium-chloride', substance: 'magnesium chloride (Dead Sea type salt)',
    waterActivityAt25Celsius: 0.33, note: 'draws water from air', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saturated-solution-potassium-chloride', substance: 'potassium chloride', waterActivityAt25Celsius: 0.843,
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'diluted-solution-sodium-chloride-20-percent', substance: 'sodium chloride', percent: 20,
    waterActivityAt25Celsius: 0.845,
    note: 'aw = exp(-0.018015 x 2 x m x phi), osmotic coefficient phi remembered (1.09 at 4.28 mol/kg; 0.98 at 1.90 mol/kg)',
    source: 'calc', confidence: 'derived',
  },
  {
    id: 'diluted-solution-sodium-chloride-10-percent', substance: 'sodium chloride', percent: 10,
    waterActivityAt25Celsius: 0.935,
    note: 'aw = exp(-0.018015 x 2 x m x phi), osmotic coefficient phi remembered (1.09 at 4.28 mol/kg; 0.98 at 1.90 mol/kg)',
    source: 'calc', confidence: 'derived',
  },
];

export const lowWaterProductClasses: readonly LowWaterProductClass[] = [
  {
    id: 'whipped-body-butter', makerProduct: 'whipped body butter', lowRisk: 'yes', criterionId: 'anhydrous',
    preservativeNeeded: false, isJudgement: true,
    note: 'Only if no aqueous ingredient, dry hands/spatula and a closed jar. Starch and plant powders carry a little bound water (row maranta-moisture).',
    source: 'calc', confidence: 'derived',
  },
  {
    id: 'balm-lip-balm-body-oil', makerProduct: 'balm, lip balm, body oil', lowRisk: 'yes', criterionId: 'anhydrous',
    preservativeNeeded: false, isJudgement: true, source: 'calc', confidence: 'derived',
  },
  {
    id: 'salt-scrub-in-oil-used-with-dry-hands', makerProduct: 'salt scrub in oil, used with dry hands',
    lowRisk: 'yes', criterionId: 'anhydrous', preservativeNeeded: false, isJudgement: true, note: 'As filled.',
    source: 'calc', confidence: 'derived',
  },
  {
    id: 'salt-scrub-in-oil-jar-opened-in-the-shower', makerProduct: 'salt scrub in oil, jar opened in the shower',
    lowRisk: 'doubtful', criterionId: 'water-activity', preservativeNeeded: true, isJudgement: true,
    note: 'Saturated brine 0.753 is above 0.75, and it rises as more water gets in. Broad preservative or single-use packs, or a spatula and a warning on the label.',
    source: 'calc', confidence: 'derived',
  },
  {
    id: 'sugar-scrub-in-oil-jar-opened-in-the-shower', makerProduct: 'sugar scrub in oil, jar opened in the shower',
    lowRisk: 'no', criterionId: 'water-activity', preservativeNeeded: true, isJudgement: true,
    note: 'Saturated sugar syrup 0.85; osmophilic yeasts and moulds grow.', source: 'calc', confidence: 'derived',
  },
  {
    id: 'cold-process-soap-bar', makerProduct: 'cold-process soap bar', lowRisk: 'yes', criterionId: 'ph-high',
    preservativeNeeded: false, isJudgement: true,
    note: 'Only when the 1 % solution really exceeds pH 10; many bars read 9 to 10, then low water activity and the soap itself carry the argument. Measure.',
    source: 'calc', confidence: 'derived',
  },
  {
    id: 'liquid-soap-potassium', makerProduct: 'liquid soap (potassium)', lowRisk: 'doubtful',
    criterionId: 'ph-high', preservativeNeeded: true, isJudgement: true,
    note: 'Usually pH 9 to 10: outside the criterion.', source: 'calc', confidence: 'derived',
  },
  {
    id: 'bath-salts-bath-bomb', makerProduct: 'bath salts, bath bomb', lowRisk: 'yes', criterionId: 'water-activity',
    preservativeNeeded: false, isJudgement: true, note: 'Dry product.', source: 'calc', confidence: 'derived',
  },
  {
    id: 'clay-or-starch-powder', makerProduct: 'clay or starch powder', lowRisk: 'yes',
    criterionId: 'water-activity', preservativeNeeded: false, isJudgement: true,
    note: 'Dry product; microbial load comes with the raw material, so test that.', source: 'calc',
    confidence: 'derived',
  },
  {
    id: 'lotion-cream-aloe-or-hydrosol-added', makerProduct: 'lotion, cream, aloe or hydrosol added', lowRisk: 'no',
    preservativeNeeded: true, isJudgement: true, note: 'Water phase: preservative plus challenge test.',
    source: 'calc', confidence: 'derived',
  },
  {
    id: 'butter-with-honey-glycerin-infusion-fresh-plant-or-milk',
    makerProduct: 'butter with honey, glycerin infusion, fresh plant or milk', lowRisk: 'no',
    preservativeNeeded: true, isJudgement: true, note: 'Brings water and food for organisms.', source: 'calc',
    confidence: 'derived',
  },
];

export const microLimits: readonly MicroLimit[] = [
  {
    id: 'micro-general', name: 'total aerobic mesophilic count, general products', maxCfuPerGramOrMl: 1000,
    note: 'ISO 17516; a result counts as over only above twice the limit, as remembered', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'micro-sensitive', name: 'total count, eye area, children under 3, mucous membranes', maxCfuPerGramOrMl: 100,
    note: 'ISO 17516; a result counts as over only above twice the limit, as remembered', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'micro-specified-organisms',
    name: 'Escherichia coli, Pseudomonas aeruginosa, Staphylococcus aureus, Candida albicans', absentInGramsOrMl: 1,
    source: 'memory', confidence: 'memory',
  },
];

export const antioxidantLevels: readonly UsageLevel[] = [
  {
    id: 'tocopherol', name: 'Tocopherol (alpha or mixed)', use: 'whole product, stops oils going rancid',
    minPercent: 0.02, typicalPercent: 0.1, maxPercent: 0.2, note: 'As an antioxidant. No effect on microbes.',
    source: 'tocopherol-brand-page', confidence: 'read',
    evidence: { typicalPercent: { source: 'calc', confidence: 'derived', note: 'between the page figures 0.02 and 0.2' } },
  },
  {
    id: 'tocopherol-as-skin-care-active', name: 'Tocopherol as skin-care active', use: 'whole product',
    minPercent: 0.1, maxPercent: 0.5, source: 'tocopherol-brand-page', confidence: 'read',
  },
  {
    id: 'natural-mixed-tocopherol-concentrate-above-34-percent',
    name: 'Natural mixed tocopherol concentrate above 34 %', use: 'whole product, weight of concentrate',
    minPercent: 0.2, typicalPercent: 0.5, maxPercent: 0.8, source: 'tocopherol-maker-page', confidence: 'read',
    evidence: { typicalPercent: { source: 'tocopherol-maker-page', confidence: 'derived', note: 'middle of the range' } },
  },
  {
    id: 'tocopherol-safety-ceiling', name: 'Tocopherol, safety ceiling', use: 'cosmetics', maxPercent: 5,
    note: 'Above roughly 0.1-0.5 % of the oil, alpha-tocopherol can speed oxidation up (memory). More is not better.',
    source: 'cir-toc', confidence: 'read',
    evidence: { maxPercent: { source: 'cir-toc', confidence: 'memory', note: 'highest surveyed use, as remembered; the 2018 conclusion safe as used was read' } },
  },
  {
    id: 'rosemary-leaf-extract', name: 'Rosemary leaf extract (oil soluble)', use: 'oils', minPercent: 0.02,
    typicalPercent: 0.1, maxPercent: 0.5, source: 'memory', confidence: 'memory',
  },
  {
    id: 'bht-in-terpene-rich-essential-oils', name: 'BHT in terpene-rich essential oils', use: 'raw oil',
    typicalPercent: 0.1, maxPercent: 0.8, source: 'memory', confidence: 'memory',
    evidence: { maxPercent: { source: 'cosing3', confidence: 'read', note: 'EU Annex III/325: other leave-on and rinse-off products; toothpaste 0.1, mouthwash 0.001' } },
  },
];

export const starchLevels: readonly UsageLevel[] = [
  {
    id: 'maranta-arundinacea-root-powder', name: 'Maranta Arundinacea Root Powder (arrowroot)',
    use: 'butters, creams', minPercent: 2, typicalPercent: 5, maxPercent: 20,
    note: 'Takes away the greasy feel. Sieve and add at cooling; does not gelatinise without water.',
    source: 'arrowroot-page-1', confidence: 'read',
    evidence: { typicalPercent: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'maranta-arundinacea-root-powder-in-loose-powders', name: 'Maranta Arundinacea Root Powder in loose powders',
    use: 'powders', maxPercent: 100, source: 'arrowroot-page-2', confidence: 'read',
  },
  {
    id: 'name-trap', name: 'name trap', use: 'label',
    text: 'Goods sold as arrowroot are often tapioca: INCI Manihot Utilissima (or Esculenta) starch instead of Maranta. Take the INCI name from the supplier document, never from the trade name.',
    source: 'arrowroot-page-3', confidence: 'read',
  },
  {
    id: 'maranta-moisture', name: 'moisture of air-dry starch', use: 'bound water', typicalPercent: 13,
    maxPercent: 16,
    note: '10 % starch therefore brings about 1.3 % bound water at a water activity near the room humidity (about 0.5): still below 0.60.',
    source: 'memory', confidence: 'memory',
  },
];

export const peroxideLevels: readonly PeroxideLevel[] = [
  {
    id: 'peroxide-limonene', name: 'Limonene (EU Annex III/88)', scope: 'raw-material', comparison: 'below',
    maxMmolPerLitre: 20, densityGramsPerMl: 0.841, maxMeqPerKg: 47.6, note: 'value must be below 20',
    source: 'cosing-limonene', confidence: 'read',
    evidence: { densityGramsPerMl: { source: 'memory', confidence: 'memory' }, maxMeqPerKg: { source: 'calc', confidence: 'derived' } },
  },
  {
    id: 'peroxide-listed-terpenes',
    name: 'Pinene, alpha- and gamma-terpinene, terpinolene, 3-carene and other listed terpenes (EU Annex III)',
    scope: 'raw-material', comparison: 'below', maxMmolPerLitre: 10, densityGramsPerMl: 0.86, maxMeqPerKg: 23.3,
    source: 'cosing3', confidence: 'read',
    evidence: { densityGramsPerMl: { source: 'memory', confidence: 'memory' }, maxMeqPerKg: { source: 'calc', confidence: 'derived' } },
  },
  {
    id: 'peroxide-cedar-cypress-thuja-turpentine',
    name: 'Cedrus atlantica, Cupressus, Thuja oils and turpentine (EU Annex III)', scope: 'raw-material',
    comparison: 'below', maxMmolPerLitre: 10, source: 'cosing3', confidence: 'read',
  },
  {
    id: 'peroxide-abies-picea-pinus-oils', name: 'Abies, Picea, Pinus oils (EU Annex III)', scope: 'raw-material',
    comparison: 'below', maxMmolPerLitre: 10, densityGramsPerMl: 0.865, maxMeqPerKg: 23.1, source: 'cosing3',
    confidence: 'read',
    evidence: { densityGramsPerMl: { source: 'memory', confidence: 'memory' }, maxMeqPerKg: { source: 'calc', confidence: 'derived' } },
  },
  {
    id: 'peroxide-linalool-and-linalool-rich-oils', name: 'Linalool and linalool-rich oils (IFRA)',
    scope: 'raw-material', comparison: 'below', maxMmolPerLitre: 20, densityGramsPerMl: 0.862, maxMeqPerKg: 46.4,
    source: 'memory', confidence: 'memory', evidence: { maxMeqPerKg: { source: 'calc', confidence: 'derived' } },
  },
  {
    id: 'peroxide-refined-vegetable-oil', name: 'Refined vegetable oil (Codex)', scope: 'raw-material',
    comparison: 'at-most', maxMeqPerKg: 10, source: 'memory', confidence: 'memory',
  },
  {
    id: 'peroxide-virgin-cold-pressed-oil-or-fat', name: 'Virgin, cold-pressed oil or fat (Codex)',
    scope: 'raw-material', comparison: 'at-most', maxMeqPerKg: 15, source: 'memory', confidence: 'memory',
  },
];

export const peroxideConversions: readonly PeroxideConversion[] = [
  {
    id: 'peroxide-units', name: 'peroxide value units', formula: 'meq/kg = 2 x (mmol/L) / density(kg/L)',
    note: 'one mole of peroxide is two equivalents; 20 mmol/L at 0.841 kg/L is 47.6 meq/kg', source: 'calc',
    confidence: 'derived',
  },
];

export const lowWaterSources: readonly ReferenceSource[] = [
  {
    id: 'laboratory-faq',
    title: 'Test laboratory FAQ listing the ISO 29621 criteria for microbiologically low-risk cosmetics',
    where: 'test laboratory page', read: true,
  },
  {
    id: 'iso-29621',
    title: 'ISO 29621:2017 Cosmetics - Microbiology - Guidelines for the risk assessment and identification of microbiologically low-risk products, scope text',
    where: 'standards catalogue page', read: true,
  },
  {
    id: 'consultant-low-risk',
    title: 'Consultant page: the low-risk justification has to be documented in the safety report',
    where: "consultant's page", read: true,
  },
  {
    id: 'beuchat', title: 'Table of minimum water activity for growth (after Beuchat)',
    where: 'table quoted on two public pages', read: true,
  },
  {
    id: 'pmc7150035', title: 'Table of minimum water activity for growth of groups of organisms',
    where: 'pmc.ncbi.nlm.nih.gov/articles/PMC7150035', read: true,
  },
  {
    id: 'selfpres', title: 'Self-preserving cosmetics, book chapter: minimum water activity per organism',
    where: 'taylorfrancis.com chapter abstract and table', read: true,
  },
  {
    id: 'cir-toc', title: 'CIR, Safety assessment of tocopherols and tocotrienols (Int J Toxicol 2018), abstract',
    where: 'pure.psu.edu', read: true,
  },
  {
    id: 'tocopherol-brand-page', title: 'Brand information page on tocopherol in oils', where: 'brand page',
    read: true,
  },
  {
    id: 'tocopherol-maker-page', title: "Maker's page: 0.2-0.8 % of a natural tocopherol concentrate above 34 %",
    where: "maker's page", read: true,
  },
  {
    id: 'arrowroot-page-1', title: 'Maker information page on arrowroot in emulsions and butters',
    where: "maker's page", read: true,
  },
  {
    id: 'arrowroot-page-2', title: "Maker's ingredient page on arrowroot", where: "maker's page", read: true,
  },
  {
    id: 'arrowroot-page-3', title: 'Retailer page selling Manihot starch as arrowroot', where: 'retailer page',
    read: true,
  },
  {
    id: 'cosing-limonene', title: 'EU cosmetic ingredient database, Limonene, Annex III/88',
    where: 'ec.europa.eu/growth/tools-databases/cosing', read: true,
  },
  {
    id: 'cosing3', title: 'European Commission cosmetic ingredient database, Annex III as exported December 2025',
    where: 'European Commission, CosIng', read: true,
  },
  {
    id: 'memory',
    title: 'From memory: ISO 17516, saturated-solution water activities (Greenspan 1977), Codex STAN 19/210, IFRA linalool specification, starch handbooks',
    where: 'iso.org; codexalimentarius.org; ifrafragrance.org', read: false,
  },
  {
    id: 'calc', title: 'Arithmetic shown in the row', where: 'own computation', read: true,
  },
];
