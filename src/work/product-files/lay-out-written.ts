import type { productFiles } from '../../contract/index.ts';
import { done, type Result } from '../../core/problem.ts';
import type { Paper as Layout, PaperPicture, PaperSection, PaperTable } from '../../print/layout/index.ts';
import { printWords, sayDateWithYear, sayTime } from '../../words/index.ts';
import { localDate } from '../local-date.ts';
import { painter } from '../painter.ts';
import type { Paper } from '../use-case.ts';
import { sayWords } from './say-words.ts';
import type { Chapter, Words } from './write-chapter.ts';

type WrittenPaper = productFiles.WrittenPaper;

interface House {
  readonly name: string;
  readonly timeZone: string;
}

/** Pictures that lie under a chapter, by its key. */
export type Pictures = ReadonlyMap<string, readonly PaperPicture[]>;
const NO_PICTURES: Pictures = new Map();

const words = printWords.written;

/** A paper lies for years: the day has its year. */
export const sayMoment = (instant: string, timeZone: string): string =>
  `${sayDateWithYear(localDate(instant, timeZone))}, ${sayTime(instant, timeZone)}`;

/** The same document as its page shows, on paper. Each page says that it prepares and assesses nothing. */
export function layOutWritten(
  paper: WrittenPaper,
  { name, timeZone }: House,
  pictures: Pictures = NO_PICTURES,
): Layout {
  const say = (text: Words): string => sayWords(text, timeZone);
  const title = say(paper.title);
  return {
    title,
    subtitle: say(paper.subtitle),
    facts: [
      ...paper.facts.map(({ label, text }) => [say(label), say(text)] as const),
      [words.asOf, sayMoment(paper.asOf, timeZone)],
    ],
    cautions: [words.notice],
    tables: [],
    sections: [
      ...missingSection(paper, say),
      ...paper.chapters.map((one) => sectionOf(one, say, pictures.get(one.key) ?? [])),
    ],
    notes: [],
    footer: printWords.paper.footer(name, words.footer(title)),
    createdAt: paper.asOf,
  };
}

type Say = (text: Words) => string;

const missingSection = ({ missing }: WrittenPaper, say: Say): PaperSection[] =>
  missing.length === 0
    ? []
    : [{ heading: words.missing, level: 1, cautions: missing.map(({ says }) => say(says)) }];

function sectionOf(one: Chapter, say: Say, pictures: readonly PaperPicture[]): PaperSection {
  const files = one.files.map(({ name }) => name).join('\n');
  const paragraphs = one.says.map(say).filter((text) => text !== '');
  return {
    heading: say(one.title),
    level: one.level,
    ...(one.source !== null && { source: say(one.source) }),
    paragraphs,
    cautions: one.cautions.map(say),
    entries: [
      ...one.entries.map(({ label, text }) => [say(label), say(text)] as const),
      ...(files === '' ? [] : [[words.files, files] as const]),
    ],
    tables: one.tables.map((table) => tableOf(table, say)),
    pictures,
  };
}

const tableOf = (table: Chapter['tables'][number], say: Say): PaperTable => ({
  heading: say(table.caption),
  columns: table.columns.map(({ title, isNumber }) => ({
    title: say(title),
    align: isNumber ? ('right' as const) : ('left' as const),
  })),
  rows: table.rows.map((row) => row.map(say)),
});

export async function paintWritten(
  fileName: string,
  paper: WrittenPaper,
  house: House,
  pictures: Pictures = NO_PICTURES,
): Promise<Result<Paper>> {
  const { paintPaperPdf } = await painter();
  const bytes = await paintPaperPdf(layOutWritten(paper, house, pictures));
  return bytes.ok ? done({ fileName, bytes: bytes.value }) : bytes;
}
