import { done } from '../../core/problem.ts';
import {
  type Evidence,
  essentialOilSources,
  essentialOils,
  type InciName,
  inciNames,
  inciSources,
  type OilConstituent,
  type ReferenceSource,
  type SourcedRow,
} from '../../reference/index.ts';
import { say } from '../../words/index.ts';
import type { UseCase } from '../use-case.ts';
import type { MaterialDetails } from './material-view.ts';
import { type Searchable, searchNames } from './search-names.ts';

type Suggestion = Searchable & {
  readonly about: string;
  readonly details: Partial<MaterialDetails>;
  /** By field: where what is filled in comes from. */
  readonly sources: Readonly<Record<string, string>>;
};

/** As long as a text of the contract may be. */
const LONGEST = 2000;
/** What a list can be read through at a glance (common practice, no source). */
const MOST = 20;

/** Facts of the tables for a new material; each keeps how it is known, and a supplier's paper replaces it. */
export const suggestMaterials: UseCase<'suggestMaterials'> = async (_context, { query }) => {
  const found = searchNames(allSuggestions(), query.like);
  return done(
    found.slice(0, MOST).map(({ key, name, about, details, sources }) => ({
      key,
      name,
      about,
      details,
      sources: { ...sources },
    })),
  );
};

let gathered: readonly Suggestion[] | undefined;

/** A name of the label list that an oil carries too is told by the oil, which says more. */
function allSuggestions(): readonly Suggestion[] {
  if (gathered) return gathered;
  const toldByOil = new Set(essentialOils.map((oil) => oil.inciNameId));
  const inciOf = new Map(inciNames.map((row) => [row.id, row]));
  gathered = [
    ...essentialOils.map((oil) => suggestOil(oil, inciOf.get(oil.inciNameId ?? ''))),
    ...inciNames.filter((row) => !toldByOil.has(row.id)).map(suggestName),
  ];
  return gathered;
}

const aboutText = (parts: readonly (string | undefined)[], confidence: string): string =>
  [
    ...parts.filter((part) => part !== undefined && part !== ''),
    ...(confidence === 'memory' ? [say({ code: 'known-from-memory', parameters: {} })] : []),
  ].join(', ');

/** The source's own title, and that nobody has seen it there where that is so. */
function sayEvidence({ source, confidence }: Evidence, sources: readonly ReferenceSource[]): string {
  const title = sources.find((one) => one.id === source)?.title;
  const memory = say({ code: 'known-from-memory', parameters: {} });
  // Titles of what was recalled open with these words themselves.
  if (confidence !== 'memory' || title?.toLowerCase().startsWith('from memory'))
    return title ?? say({ code: 'known-from-several', parameters: {} });
  return title === undefined ? memory : `${title}, ${memory}`;
}

/** Each field that was filled in, with its own evidence, else its row's. */
const sourcesOf = (
  fields: Readonly<Record<string, unknown>>,
  row: SourcedRow,
  sources: readonly ReferenceSource[],
): Record<string, string> =>
  Object.fromEntries(
    Object.entries(fields)
      .filter(([, value]) => value !== undefined && value !== null && value !== '' && !isEmptyList(value))
      .map(([field]) => [field, sayEvidence(row.evidence?.[field] ?? row, sources)]),
  );

const isEmptyList = (value: unknown): boolean => Array.isArray(value) && value.length === 0;

const EMPTY = { kind: 'ingredient', botanical: '', plantPart: null, process: null, role: null } as const;

function suggestOil(oil: (typeof essentialOils)[number], label: InciName | undefined): Suggestion {
  const constituents = oil.constituents.map(constituentOf);
  const weakest = constituents.some((one) => one.confidence === 'memory') ? 'memory' : oil.confidence;
  return {
    key: `oil-${oil.id}`,
    name: oil.name,
    alsoCalled: [...oil.aliases, oil.botanical, oil.inciEu, label?.name ?? ''],
    rank: 0,
    about: aboutText([oil.botanical, oil.plantPart, oil.process], weakest),
    details: {
      ...EMPTY,
      name: oil.name,
      inciEu: oil.inciEu,
      inciUs: label?.inciUs ?? '',
      botanical: oil.botanical,
      cas: [...oil.cas],
      plantPart: oil.plantPart,
      process: oil.process ?? null,
      role: 'fragrance',
      constituents,
      // The tables give ranges of what they list. That nothing else is in it only a supplier's paper can say.
      constituentsAre: 'partial',
      constituentsPaper: say({
        code: 'known-from-tables',
        parameters: { sources: [...new Set(constituents.map((one) => one.source))].join('; ') },
      }).slice(0, LONGEST),
    },
    sources: {
      ...sourcesOf(
        {
          name: oil.name,
          inciEu: oil.inciEu,
          botanical: oil.botanical,
          cas: oil.cas,
          plantPart: oil.plantPart,
          process: oil.process,
        },
        oil,
        essentialOilSources,
      ),
      ...(label && sourcesOf({ inciUs: label.inciUs }, label, inciSources)),
    },
  };
}

/**
 * The range that covers every figure known: where one recalled earlier reaches further than the one read, it counts,
 * since a limit is judged on the most. Where a single figure is known, it stands for all three and the source says so.
 */
function constituentOf(one: OilConstituent): MaterialDetails['constituents'][number] {
  const { remembered, typicalPercent } = one;
  const least = Math.min(one.leastPercent ?? typicalPercent, remembered?.leastPercent ?? typicalPercent);
  const most = Math.max(one.mostPercent ?? typicalPercent, remembered?.mostPercent ?? typicalPercent);
  const isRecalled = remembered !== undefined && most === remembered.mostPercent && most !== one.mostPercent;
  const evidence = isRecalled ? remembered : (one.evidence?.mostPercent ?? one);
  const isSingle = one.leastPercent === undefined && one.mostPercent === undefined;
  return {
    name: one.name,
    cas: one.cas ?? null,
    leastPercent: String(least),
    typicalPercent: String(typicalPercent),
    mostPercent: String(most),
    source: [
      sourceTitle(evidence.source),
      ...(isSingle ? [say({ code: 'single-figure', parameters: {} })] : []),
    ].join('; '),
    confidence: evidence.confidence,
  };
}

const sourceTitle = (id: string): string =>
  essentialOilSources.find((source) => source.id === id)?.title ?? id;

/** Ready-made soap comes after the fat it is made of: who types the fat mostly means the fat. */
const rankOf = (group: string): number => (group === 'soap' ? 1 : 0);
const ROLES: Readonly<Record<string, MaterialDetails['role']>> = {
  'essential-oil': 'fragrance',
  colourant: 'colourant',
};

function suggestName(row: InciName): Suggestion {
  const name = row.name.charAt(0).toUpperCase() + row.name.slice(1);
  return {
    key: `name-${row.id}`,
    name,
    alsoCalled: [row.inciEu, row.inciUs ?? ''],
    rank: rankOf(row.group),
    about: aboutText([row.inciEu], row.confidence),
    details: {
      ...EMPTY,
      name,
      inciEu: row.inciEu,
      inciUs: row.inciUs ?? '',
      cas: [...row.cas],
      role: ROLES[row.group] ?? null,
      constituents: [],
    },
    sources: sourcesOf({ name, inciEu: row.inciEu, inciUs: row.inciUs, cas: row.cas }, row, inciSources),
  };
}
