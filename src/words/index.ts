export { printWords } from './print.en-gb.ts';
export { type SayingData, type SayOptions, say } from './say.ts';
export { isDate, isInstant, sayDate, sayDateWithYear, sayInstant, sayTime } from './say-date.ts';
export { sayDecimal, sayGrams, sayMoney, sayNumber } from './say-figure.ts';
export { type SpokenProblem, sayProblem } from './say-problem.ts';
export { sayWhere } from './say-where.ts';
