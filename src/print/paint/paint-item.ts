import {
  type Placed,
  type PlacedBoxes,
  type PlacedImage,
  type PlacedPath,
  type PlacedRule,
  toneColour,
} from '../layout/index.ts';
import type { KeptImages } from './keep-images.ts';
import { type KeptTexts, paintText } from './paint-text.ts';
import { type Pdf, POINTS_PER_MM, points } from './pdf.ts';

/** What stands in the file once and is drawn in many places. */
export interface Kept {
  readonly images: KeptImages;
  readonly texts: KeptTexts;
  readonly forms: Map<PlacedBoxes['boxes'], { readonly label: string; readonly form: unknown }>;
}

export function paintItem(pdf: Pdf, item: Placed, kept: Kept): void {
  if (item.turnedAbout === undefined) {
    paintUpright(pdf, item, kept);
    return;
  }
  const [x, y] = [points(item.turnedAbout.xMm), points(item.turnedAbout.yMm)];
  pdf.save().transform(0, 1, -1, 0, x + y, y - x);
  paintUpright(pdf, item, kept);
  pdf.restore();
}

function paintUpright(pdf: Pdf, item: Placed, kept: Kept): void {
  if (item.kind === 'text') paintText(pdf, item, kept.texts);
  else if (item.kind === 'rule') paintRule(pdf, item);
  else if (item.kind === 'path') paintPath(pdf, item);
  else if (item.kind === 'boxes') paintBoxes(pdf, item, kept);
  else paintImage(pdf, item, kept);
}

function paintRule(pdf: Pdf, { fromMm: [x1, y1], toMm: [x2, y2], thicknessMm, tone }: PlacedRule): void {
  pdf.lineWidth(points(thicknessMm)).strokeColor(toneColour[tone]);
  pdf.moveTo(points(x1), points(y1)).lineTo(points(x2), points(y2)).stroke();
}

function paintPath(pdf: Pdf, { xMm, yMm, d, strokeMm, tone }: PlacedPath): void {
  pdf.save().translate(points(xMm), points(yMm)).scale(POINTS_PER_MM);
  if (strokeMm === null) pdf.path(d).fill(toneColour[tone]);
  else pdf.path(d).lineWidth(strokeMm).lineJoin('round').stroke(toneColour[tone]);
  pdf.restore();
}

/** A form XObject (ISO 32000-1, 8.10): the squares of a code are written once, however many labels carry it. */
function paintBoxes(pdf: Pdf, { boxes, xMm, yMm, tone }: PlacedBoxes, { forms }: Kept): void {
  const known = forms.get(boxes) ?? { label: `F${forms.size + 1}`, form: writeForm(pdf, boxes) };
  forms.set(boxes, known);
  pdf.page.xobjects[known.label] = known.form;
  pdf.save().fillColor(toneColour[tone]);
  pdf.translate(points(xMm), points(yMm)).scale(POINTS_PER_MM);
  pdf.addContent(`/${known.label} Do`);
  pdf.restore();
}

function writeForm(pdf: Pdf, boxes: PlacedBoxes['boxes']): unknown {
  const right = Math.max(...boxes.map(([left, , width]) => left + width));
  const bottom = Math.max(...boxes.map(([, top, , height]) => top + height));
  const form = pdf.ref({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, right, bottom], Resources: {} });
  form.end(`${boxes.map((box) => `${box.map(short).join(' ')} re`).join('\n')}\nf\n`);
  return form;
}

/** A hundredth of a micrometre: squares that meet must not part by a rounding. */
const short = (mm: number): number => Math.round(mm * 1e5) / 1e5;

function paintImage(pdf: Pdf, item: PlacedImage, { images }: Kept): void {
  const image = images.get(item.bytes);
  if (image === undefined) throw new Error(`${item.element}: picture was not kept`);
  const { clip } = item;
  pdf.save();
  pdf.translate(points(clip.xMm), points(clip.yMm)).scale(POINTS_PER_MM).path(clip.d).clip();
  pdf.image(image as unknown as PDFKit.Mixins.ImageSrc, item.xMm - clip.xMm, item.yMm - clip.yMm, {
    width: item.widthMm,
    height: item.heightMm,
  });
  pdf.restore();
}
