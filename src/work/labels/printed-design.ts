import type { labels } from '../../contract/index.ts';

/** Printed before there were designs: front and back, on plain paper. */
const FRONT_AND_BACK: labels.PrintedDesign = {
  pieces: [
    { id: 'front', role: 'front' },
    { id: 'back', role: 'back' },
  ],
  sheet: null,
  firstPosition: 1,
};

export const readPrintedDesign = (json: string | null): labels.PrintedDesign =>
  json === null ? FRONT_AND_BACK : (JSON.parse(json) as labels.PrintedDesign);
