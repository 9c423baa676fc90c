export { briefGrams } from './brief-grams.ts';
export { cliWords } from './cli.en-gb.ts';
export { cutPercent } from './cut-percent.ts';
export { LABEL_LANGUAGES, type LabelLanguage } from './label-language.ts';
export { labelPrintWords } from './label-print.en-gb.ts';
export type { LabelWords } from './labels/label-words.ts';
export { labelWordsIn } from './labels/label-words-in.ts';
export { letterWords } from './letter.en-gb.ts';
export { answerWords } from './pages/answers.en-gb.ts';
export { awayWords } from './pages/away.en-gb.ts';
export { certificateWords } from './pages/certificates.en-gb.ts';
export { complaintWords } from './pages/complaints.en-gb.ts';
export {
  aimWords,
  chartWords,
  closeWords,
  lightWords,
  otherWords,
  readyWords,
  tareWords,
  tinsAirWords,
  wayWords,
} from './pages/fill-bench.en-gb.ts';
export { cleaningWords, fillingWords, traceWords } from './pages/filling.en-gb.ts';
export { firstStepWords } from './pages/first-steps.en-gb.ts';
export { checkWords, formulaWords, reportWords } from './pages/formulas.en-gb.ts';
export { labelWords } from './pages/labels.en-gb.ts';
export { makingWords } from './pages/making.en-gb.ts';
export { materialWords } from './pages/materials.en-gb.ts';
export { memoryWords } from './pages/memory.en-gb.ts';
export { morningWords } from './pages/morning.en-gb.ts';
export { orderWords } from './pages/orders.en-gb.ts';
export { productFileWords } from './pages/product-files.en-gb.ts';
export { productWords } from './pages/products.en-gb.ts';
export { reachWords } from './pages/reach.en-gb.ts';
export { reachGuide } from './pages/reach-guide.en-gb.ts';
export { roomWords } from './pages/room.en-gb.ts';
export { scaleWords } from './pages/scales.en-gb.ts';
export { scentWords } from './pages/scent.en-gb.ts';
export { shelfWords } from './pages/shelf.en-gb.ts';
export { partWords, shellWords } from './pages/shell.en-gb.ts';
export { startWords } from './pages/start.en-gb.ts';
export { stepWords } from './pages/steps.en-gb.ts';
export { termWords } from './pages/terms.en-gb.ts';
export { handWords, mishapWords, weighInWords } from './pages/weighing.en-gb.ts';
export { workshopWords } from './pages/workshop.en-gb.ts';
export { worstCaseWords } from './pages/worst-case.en-gb.ts';
export { printWords } from './print.en-gb.ts';
export { type SayingData, type SayOptions, say } from './say.ts';
export {
  isDate,
  isInstant,
  sayDate,
  sayDateInFull,
  sayDateWithYear,
  sayInstant,
  sayTime,
} from './say-date.ts';
export { sayDecimal, sayGrams, sayMoney, sayNumber } from './say-figure.ts';
export { sayMarkets } from './say-markets.ts';
export { type SpokenProblem, sayProblem } from './say-problem.ts';
export { sayWhere } from './say-where.ts';
