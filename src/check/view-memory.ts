import type { z } from 'zod';
import { type formulas, type Market, type Saying, saying } from '../contract/index.ts';
import { exact, toText } from '../core/quantity/index.ts';
import { findWhatHangsOnMemory, type RememberedThing } from '../core/safety/index.ts';
import { cutPercent } from '../words/index.ts';
import type { Checked } from './checked.ts';
import type { OpenQuestion } from './list-questions.ts';
import { usesOf } from './uses-of.ts';

export type MemoryView = z.output<typeof formulas.memoryOfCheck>;
type Line = MemoryView['firm'][number];

/** What holds even if memory errs, what would change, and what nobody knows; each with the paper to ask for. */
export function viewMemory(checked: Checked, open: readonly OpenQuestion[]): MemoryView {
  const found = checked.groups.map(({ answer }) => findWhatHangsOnMemory(answer.markets));
  const categories = [...new Set(usesOf(checked.opened.details).map(({ category }) => category))];
  return {
    firm: mergeMarkets(
      found.flatMap(({ firm }) => firm),
      categories,
    ),
    hangs: mergeMarkets(
      found.flatMap(({ hangs }) => hangs),
      categories,
    ),
    unknown: open
      .filter(({ decided }) => decided === null)
      .map(({ substance, why, markets }) => ({
        substance,
        says: why,
        ask: askForUnknown(why, categories),
        markets,
      })),
  };
}

/** The same thing in several markets is said once. */
function mergeMarkets(things: readonly RememberedThing[], categories: readonly string[]): Line[] {
  const merged = new Map<string, { readonly line: Line; readonly markets: Market[] }>();
  for (const thing of things) {
    // The check was asked for the workshop's own markets.
    const market = thing.market as Market;
    const line = {
      substance: thing.substance,
      says: sayThing(thing),
      ask: askForRemembered(thing, categories),
      markets: [],
    };
    const key = JSON.stringify(line);
    const known = merged.get(key);
    if (!known) merged.set(key, { line, markets: [market] });
    else if (!known.markets.includes(market)) known.markets.push(market);
  }
  return [...merged.values()].map(({ line, markets }) => ({ ...line, markets }));
}

function sayThing({ about, substance, percent, boundPercent, citation = '' }: RememberedThing): Saying {
  const facts = {
    substance,
    percent: cutPercent(percent, [boundPercent]),
    boundPercent: toText(exact(boundPercent)),
    isOver: percent > boundPercent,
    rule: citation,
  };
  return about === 'limit' ? saying('memory-limit', facts) : saying('memory-name', facts);
}

/** A remembered amount is answered by the supplier, a remembered rule by whoever prints it. */
function askForRemembered(
  { remembered, fromMaterials, substance, kind, citation = '' }: RememberedThing,
  categories: readonly string[],
): Saying | null {
  const materials = fromMaterials.join(', ');
  if (remembered.includes('amount')) return saying('ask-composition', { substance, materials });
  if (!remembered.includes('rule')) return null;
  return kind === 'ifra'
    ? saying('ask-ifra', { materials, categories: categories.join(', ') })
    : saying('ask-look-up', { rule: citation });
}

function askForUnknown({ code, parameters }: Saying, categories: readonly string[]): Saying | null {
  const substance = String(parameters.substance ?? '');
  switch (code) {
    case 'unknown-needs-certificate':
    case 'unknown-counted-as-other':
      return parameters.hasMost === true
        ? saying('ask-peroxide', { substance })
        : saying('ask-figure', {
            substance,
            hasWhat: (parameters.asWhat ?? '') !== '',
            asWhat: parameters.asWhat ?? '',
          });
    case 'unknown-value':
      return saying('ask-ifra', { materials: substance, categories: categories.join(', ') });
    case 'unknown-amount':
    case 'unknown-label-amount':
      return saying('ask-amount', { substance });
    case 'unknown-composition':
    case 'unknown-rest':
    case 'unknown-rest-unsaid':
    case 'unknown-constituent':
      return saying('ask-everything', { material: parameters.material ?? substance });
    case 'unknown-use':
    case 'unknown-law-not-in-tables':
      return null;
    case 'unknown-positive-list':
    case 'unknown-conditions':
      return saying('ask-look-up', { rule: parameters.rule ?? '' });
    default:
      return saying('ask-identity', { substance });
  }
}
