import type { ElementLaw, LabelLaw, LabelMarket, SaleCountry } from '../core/label/index.ts';
import {
  type LabelRule,
  labelLanguages,
  labelRules,
  usLabelRules,
  usPanelFigureHeights,
} from '../reference/index.ts';
import { ingredientOrder } from './label-tables.ts';
import { netContentsTables } from './net-contents-tables.ts';
import { rowById } from './row-by-id.ts';

const ARTICLE_19 = 'Regulation (EC) No 1223/2009, Article 19';

/** No law asks for a name; one without a place of its own stands where people look. */
const PRODUCT_NAME: ElementLaw = {
  source: 'common practice, no source',
  confidence: 'memory',
  onContainer: false,
  onPackaging: false,
};

const lawOf = (
  { confidence, onContainer = false, onPackaging = false }: LabelRule,
  source: string,
): ElementLaw => ({ source, confidence, onContainer, onPackaging });

const european = (id: string, source: string): ElementLaw => lawOf(rowById(labelRules, id), source);

/** The language is that of the elements that have one: on container and packaging. */
const languageLaw = (id: string, source: string): ElementLaw => ({
  ...european(id, source),
  onContainer: true,
  onPackaging: true,
});

/** In the order in which people read them. */
const europeanElements = (market: LabelMarket): LabelLaw['elements'] => ({
  'product-name': PRODUCT_NAME,
  function: european('function', `${ARTICLE_19}(1)(f)`),
  'nominal-content': european('nominal-content', `${ARTICLE_19}(1)(b); Directive 76/211/EEC, Annex I 3.1`),
  'e-mark': {
    ...european('e-mark', 'Directive 76/211/EEC; SI 2006/659, regulation 2'),
    onContainer: true,
    onPackaging: true,
  },
  ingredients: european('ingredients', `${ARTICLE_19}(1)(g)`),
  'minimum-durability': european('durability-date', `${ARTICLE_19}(1)(c)`),
  'period-after-opening': european('pao', `${ARTICLE_19}(1)(c)`),
  precautions: european('precautions', `${ARTICLE_19}(1)(d)`),
  'batch-number': european('batch', `${ARTICLE_19}(1)(e)`),
  'responsible-person': european(
    market === 'GB' ? 'rp-gb' : 'rp-established',
    market === 'GB'
      ? `${ARTICLE_19}(1)(a), as it applies in Great Britain; notices on the label transition`
      : `${ARTICLE_19}(1)(a)`,
  ),
  'country-of-origin': european('country-of-origin', `${ARTICLE_19}(1)(a)`),
  language:
    market === 'EU'
      ? languageLaw('language', `${ARTICLE_19}(5)`)
      : languageLaw('language-gb', `${ARTICLE_19}(5), as it applies in the United Kingdom`),
});

/** Each unit is its own package here: where a carton is used, the outer one bears it too (21 CFR 701.2, from memory). */
const american = (id: string, source: string): ElementLaw => ({
  ...lawOf(rowById(usLabelRules, id), source),
  onContainer: true,
  onPackaging: true,
});

const fromMemory = (source: string): ElementLaw => ({
  source,
  confidence: 'memory',
  onContainer: true,
  onPackaging: true,
});

const NOT_ASKED = 'not asked for by federal law';

const AMERICAN_ELEMENTS: LabelLaw['elements'] = {
  'product-name': PRODUCT_NAME,
  function: american('us-identity', '21 CFR 701.11, statement of identity'),
  'nominal-content': american('us-net-units', '21 CFR 701.13, net contents in both units'),
  ingredients: american('us-ingredient-order', '21 CFR 701.3'),
  'minimum-durability': { ...PRODUCT_NAME, source: NOT_ASKED },
  'period-after-opening': { ...PRODUCT_NAME, source: NOT_ASKED },
  precautions: american('us-warning', '21 CFR 740, with 740.10 where safety is not substantiated'),
  'batch-number': { ...PRODUCT_NAME, source: NOT_ASKED },
  'responsible-person': american('us-name', '21 CFR 701.12, name and place of business'),
  contact: american('us-contact', 'MoCRA, contact on the label for reports of adverse events'),
  'country-of-origin': fromMemory('19 USC 1304'),
  language: fromMemory('21 CFR 701.2'),
};

/** Until when Great Britain takes a label with the other responsible person alone. */
const { until: EU_ADDRESS_IN_GB_UNTIL } = rowById(labelRules, 'rp-gb');
if (EU_ADDRESS_IN_GB_UNTIL === undefined)
  throw new Error('the label rules lack the day until which the other address will do');

const shared = {
  figureHeights: netContentsTables.figureHeights,
  // "Less than 5 g or 5 ml" is exempt (Article 19(1)(b)): the row nominal-content names it in words.
  contentFromGrams: 5,
  // 5 g to 10 kg: the row e-mark names it in words, from memory.
  eMarkGrams: { from: 5, upTo: 10_000 },
  euAddressInGbUntil: EU_ADDRESS_IN_GB_UNTIL,
};

const LAWS: Readonly<Record<LabelMarket, LabelLaw>> = {
  GB: { ...shared, elements: europeanElements('GB'), order: ingredientOrder('GB') },
  NI: { ...shared, elements: europeanElements('NI'), order: ingredientOrder('NI') },
  EU: { ...shared, elements: europeanElements('EU'), order: ingredientOrder('EU') },
  US: {
    ...shared,
    elements: AMERICAN_ELEMENTS,
    order: ingredientOrder('US'),
    panelHeights: usPanelFigureHeights,
  },
};

/** The published label rules of one market, bound for core/label. */
export const labelLawOf = (market: LabelMarket): LabelLaw => LAWS[market];

/** The member states that labels can be sold in, with the languages that they ask for (from memory). */
export const saleCountries: readonly SaleCountry[] = labelLanguages;
