import type { ProblemValue } from '../core/problem.ts';
import { briefGrams } from './brief-grams.ts';
import { findAmounts } from './find-figures.ts';
import { sayings } from './registry.ts';
import { render, type Words } from './render.ts';
import { isDate, isInstant, sayDate, sayInstant } from './say-date.ts';
import { sayDecimal } from './say-figure.ts';
import { isOfMarkets, sayMarkets } from './say-markets.ts';

/** A sentence as data, as the server sends it (contract: saying). */
export interface SayingData {
  readonly code: string;
  readonly parameters: Readonly<Record<string, ProblemValue>>;
}

/** Where the workshop's clock stands; without it, the clock of the United Kingdom. */
export interface SayOptions {
  readonly timeZone?: string | undefined;
}

function sayValue(name: string, value: ProblemValue, { timeZone }: SayOptions): string | number {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return value;
  if (isDate(value)) return sayDate(value);
  if (isInstant(value)) return sayInstant(value, timeZone);
  if (isOfMarkets(name)) return sayMarkets(value);
  return /grams$|percent$/i.test(name) ? sayDecimal(value) : value;
}

/**
 * `{day}` says a date near by in words, `{market}` a market in full; `{day, date, long}` and `{market, select, ...}` need
 * it as it came, so texts with a comma keep the value.
 */
function wordsOf(text: string, { parameters }: SayingData, options: SayOptions): Words {
  return Object.fromEntries(
    Object.entries(withBriefAmounts(text, parameters)).map(([name, value]) => [
      name,
      typeof value === 'string' && new RegExp(`\\{${name}, (date|time|select)`).test(text)
        ? value
        : sayValue(name, value, options),
    ]),
  );
}

/** What stands, is short or is to be bought is said with the digits that a scale shows; problems keep theirs. */
function withBriefAmounts(
  text: string,
  parameters: SayingData['parameters'],
): Readonly<Record<string, ProblemValue>> {
  if (parameters.unit !== 'g') return parameters;
  const brief = findAmounts(text).flatMap((name) => {
    const grams = parameters[name];
    return typeof grams === 'string' ? [[name, briefGrams(grams)] as const] : [];
  });
  return { ...parameters, ...Object.fromEntries(brief) };
}

/** Says a sentence in plain British English. */
export function say(saying: SayingData, options: SayOptions = {}): string {
  const text = sayings.get(saying.code);
  const said =
    text === undefined ? undefined : render(text, wordsOf(text, saying, options), options.timeZone);
  return said ?? sayUnknown(saying.code, saying.parameters);
}

/** No sentence for it: what is known is shown, never hidden. */
export function sayUnknown(code: string, parameters: Readonly<Record<string, ProblemValue>>): string {
  const known = Object.entries(parameters).map(
    ([name, value]) => `${name}: ${value === null ? 'nothing' : String(value)}`,
  );
  return `There are no words yet for \u201c${code}\u201d${known.length === 0 ? '' : ` (${known.join('; ')})`}.`;
}
