import { type Placed, type PlacedBoxes, type PlacedImage, type PlacedText, toneColour } from './placed.ts';

/** One placed item as an SVG element, in millimetres. */
export function itemToSvg(item: Placed): string {
  const colour = toneColour[item.tone];
  if (item.kind === 'text') return textToSvg(item, colour);
  if (item.kind === 'boxes') return boxesToSvg(item, colour);
  if (item.kind === 'image') return imageToSvg(item);
  if (item.kind === 'rule') {
    const [x1, y1] = item.fromMm.map(short);
    const [x2, y2] = item.toMm.map(short);
    return `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="${colour}" stroke-width="${item.thicknessMm}"/>`;
  }
  const paint =
    item.strokeMm === null
      ? `fill="${colour}"`
      : `fill="none" stroke="${colour}" stroke-width="${short(item.strokeMm)}" stroke-linejoin="round"`;
  return `<path transform="translate(${short(item.xMm)} ${short(item.yMm)})" d="${item.d}" ${paint}/>`;
}

const boxesToSvg = ({ boxes, xMm, yMm }: PlacedBoxes, colour: string): string => {
  const d = boxes
    .map(
      ([left, top, width, height]) =>
        `M${short(left)} ${short(top)}h${short(width)}v${short(height)}h${short(-width)}z`,
    )
    .join('');
  return `<path transform="translate(${short(xMm)} ${short(yMm)})" d="${d}" fill="${colour}" shape-rendering="crispEdges"/>`;
};

function imageToSvg(item: PlacedImage): string {
  const { clip, bytes, type } = item;
  const id = `clip-${item.element.replace(/[^a-z0-9]+/gi, '-')}`;
  const href = `data:image/${type};base64,${toBase64(bytes)}`;
  return (
    `<clipPath id="${id}"><path transform="translate(${short(clip.xMm)} ${short(clip.yMm)})" d="${clip.d}"/></clipPath>` +
    `<image clip-path="url(#${id})" x="${short(item.xMm)}" y="${short(item.yMm)}" width="${short(item.widthMm)}" ` +
    `height="${short(item.heightMm)}" preserveAspectRatio="none" href="${href}"/>`
  );
}

const CHUNK = 0x8000;

/** In pieces, since one call takes only so many arguments. */
function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (let start = 0; start < bytes.length; start += CHUNK)
    binary += String.fromCharCode(...bytes.subarray(start, start + CHUNK));
  return btoa(binary);
}

const WEIGHTS = { regular: 400, semibold: 600, bold: 700 } as const;

const textToSvg = (item: PlacedText, colour: string): string =>
  `<text x="${short(item.xMm)}" y="${short(item.baselineMm)}" font-size="${short(item.sizeMm)}" ` +
  `font-weight="${WEIGHTS[item.weight]}" fill="${colour}" textLength="${short(item.widthMm)}" ` +
  `lengthAdjust="spacingAndGlyphs" data-element="${escapeXml(item.element)}">${escapeXml(keepEdgeBlanks(item.text))}</text>`;

/** Blanks at the ends of a text are dropped by some browsers in spite of xml:space; a no-break space is kept by all. */
const keepEdgeBlanks = (text: string): string => text.replace(/^ | $/g, '\u00a0');

/** A micrometre is finer than any printer or screen. */
const short = (mm: number): string => String(Math.round(mm * 1000) / 1000);

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

export const escapeXml = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? '');
