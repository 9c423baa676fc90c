import { printWords } from '../../words/index.ts';

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;
const MONTH = /^(\d{4})-(\d{2})$/;

/** `2027-05-09` as "9 May 2027", `2027-05` as "May 2027". Anything else, such as "not known", is a text already. */
export function writeDay(text: string): string {
  const [, year, month, day] = DAY.exec(text) ?? MONTH.exec(text) ?? [];
  if (year === undefined || !isMonth(Number(month))) return text;
  return day === undefined
    ? printWords.paper.month(Number(year), Number(month))
    : printWords.paper.day(Number(year), Number(month), Number(day));
}

const isMonth = (month: number): boolean => month >= 1 && month <= 12;
