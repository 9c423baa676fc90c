/** Numbers of lots, batches and runs: letters, a hyphen, four figures or more, and a letter where a batch has several runs. */
const NUMBER = /(\b[A-Z]{1,4}-\d{4,}[A-Z]*\b)/;

export interface TextPart {
  /** Where in the text it begins. */
  readonly at: number;
  readonly text: string;
  /** Not to be broken at its hyphen. */
  readonly isNumber: boolean;
}

/** A text in parts, of which each number is one. */
export function splitNumbers(text: string): TextPart[] {
  let at = 0;
  const parts = text.split(NUMBER).map((part, index) => {
    const begins = at;
    at += part.length;
    return { at: begins, text: part, isNumber: index % 2 === 1 };
  });
  return parts.filter((part) => part.text !== '');
}
