import type { Faces } from './face.ts';
import type { Part, PlacedText, Tone } from './placed.ts';
import type { Line } from './set-line.ts';

export interface LinePlace {
  readonly xMm: number;
  readonly baselineMm: number;
  readonly sizeMm: number;
  readonly tone: Tone;
  readonly element: string;
  readonly part?: Part;
}

/** Puts the runs of a line side by side from x onwards, each with the box of its ink. */
export function placeLine(line: Line, place: LinePlace, faces: Faces): PlacedText[] {
  let xMm = place.xMm;
  return line.runs.map((run, index) => {
    const item: PlacedText = {
      kind: 'text',
      ...place,
      text: run.text,
      weight: run.weight,
      xMm,
      widthMm: run.widthMm,
      ink: inkBox(run.text, xMm, place, faces[run.weight]),
      hasSpaceAfter: index === line.runs.length - 1 && line.hasSpaceAfter,
    };
    xMm += run.widthMm;
    return item;
  });
}

function inkBox(text: string, xMm: number, place: LinePlace, face: Faces['regular']): PlacedText['ink'] {
  const { sizeMm, baselineMm } = place;
  const ink = face.inkOf(text);
  if (ink === null) return { left: xMm, right: xMm, top: baselineMm, bottom: baselineMm };
  return {
    left: xMm + ink.left * sizeMm,
    right: xMm + ink.right * sizeMm,
    top: baselineMm - ink.top * sizeMm,
    bottom: baselineMm - ink.bottom * sizeMm,
  };
}
