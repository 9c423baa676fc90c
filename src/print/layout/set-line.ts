import type { Faces, Weight } from './face.ts';
import type { Token } from './split-into-tokens.ts';

export interface Run {
  readonly text: string;
  readonly weight: Weight;
  readonly widthMm: number;
}

export interface Line {
  readonly runs: readonly Run[];
  readonly widthMm: number;
  readonly hasSpaceAfter: boolean;
}

/** Joins tokens to runs of one weight and measures each as it will be drawn. */
export function setLine(tokens: readonly Token[], sizeMm: number, faces: Faces): Line {
  const joined: { text: string; weight: Weight }[] = [];
  tokens.forEach((token, index) => {
    const isLast = index === tokens.length - 1;
    const text = token.text + (isLast ? token.ending : token.joiner);
    const open = joined.at(-1);
    if (open?.weight === token.weight) open.text += text;
    else joined.push({ text, weight: token.weight });
  });
  const runs = joined.map((run) => ({ ...run, widthMm: faces[run.weight].advanceOf(run.text) * sizeMm }));
  return {
    runs,
    widthMm: runs.reduce((sum, run) => sum + run.widthMm, 0),
    hasSpaceAfter: tokens.at(-1)?.joiner === ' ',
  };
}

/** How many tokens from `start` fit on a line of this width; 0 where not even the first does. */
export function countFitting(
  tokens: readonly Token[],
  start: number,
  widthMm: number,
  sizeMm: number,
  faces: Faces,
): number {
  let count = 0;
  while (start + count < tokens.length) {
    const line = setLine(tokens.slice(start, start + count + 1), sizeMm, faces);
    if (line.widthMm > widthMm) break;
    count += 1;
  }
  return count;
}
