import { productWords, termWords } from '../../../words/index.ts';
import type { Choice } from '../../parts/select.tsx';
import type { Described } from '../../show/find-differences.ts';
import { nameCountry } from './name-country.ts';
import type { FaceDraft, ProductDraft } from './product-draft.ts';
import type { ProductParts } from './use-parts.ts';

const { form: words } = productWords;

const nameIn = (choices: readonly Choice[], id: string): string =>
  choices.find((choice) => choice.id === id)?.name ?? '';
const faceInWords = ({ shape, width, height }: FaceDraft): string =>
  `${termWords.shape[shape]}, ${width} × ${height} mm`;

const textsInWords = (texts: ProductDraft['texts']): string =>
  Object.entries(texts)
    .map(([language, text]) => `${language}: ${Object.values(text ?? {}).join(', ')}`)
    .join('; ');

/** The draft in words, to be held against what somebody else wrote. */
export const describeProduct =
  (parts: ProductParts) =>
  (draft: ProductDraft): Described => [
    [words.name, draft.name],
    [words.formula, nameIn(parts.formulas, draft.formulaId)],
    [words.declared, draft.declaredGrams],
    [words.aim, draft.aimGrams],
    [words.basis, termWords.fillBasis[draft.fillBasis]],
    [words.loss, draft.bowlLossPercent],
    [words.headspace, draft.headspacePercent],
    [words.retained, draft.retainedGrams],
    [words.tin, nameIn(parts.tins, draft.tinId)],
    [words.lid, nameIn(parts.lids, draft.lidId)],
    [words.label2, nameIn(parts.labels, draft.labelId)],
    [words.markets, draft.markets.map((market) => termWords.market[market]).join(', ')],
    [words.saleCountries, draft.saleCountries.map(nameCountry).join(', ')],
    [words.scent, words.scents[draft.scentOnLabel]],
    [words.function, draft.functionText],
    [words.precautions, draft.precautions],
    [words.texts, textsInWords(draft.texts)],
    [words.gtin, draft.gtin],
    [words.bestBefore, draft.bestBeforeMonths],
    [words.opened, draft.openedMonths],
    [
      words.noOpened,
      draft.noOpenedPeriod === '' ? words.mayNeedOpened : words.noOpenedWhys[draft.noOpenedPeriod],
    ],
    [words.price, draft.price],
    [words.face, faceInWords(draft.faceMm)],
    [words.back, faceInWords(draft.backMm)],
    [words.withdrawn, draft.isWithdrawn ? productWords.withdrawn : productWords.sold],
  ];
