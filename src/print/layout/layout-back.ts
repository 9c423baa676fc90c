import { done, type Result } from '../../core/problem.ts';
import { printWords } from '../../words/index.ts';
import { type Block, contentOf } from './block.ts';
import { emForXHeightMm, type Faces } from './face.ts';
import { fitFace } from './fit-face.ts';
import type { FlowFailure } from './flow-blocks.ts';
import type { FaceLayout, LabelBack } from './label.ts';
import { BACK_STEP_MM, INSET_MM, LARGEST_BACK_X_HEIGHT_MM, SMALLEST_X_HEIGHT_MM } from './label-rules.ts';
import { OPEN_JAR_HEIGHT_MM, OPEN_JAR_WIDTH_MM, placeOpenJar } from './open-jar.ts';
import { type FaceSize, insetRegion, type Region } from './outline.ts';
import type { Box } from './placed.ts';
import type { Span } from './split-into-tokens.ts';

const STEPS = Math.round((LARGEST_BACK_X_HEIGHT_MM - SMALLEST_X_HEIGHT_MM) / BACK_STEP_MM) + 1;
/** White round the open jar. */
const JAR_GAP_MM = 1.2;

/** Everything that the law puts on the back, in letters as large as fit, and the open jar where months are given. */
export function layoutBack(back: LabelBack, faces: Faces): Result<FaceLayout> {
  const isRound = back.size.shape === 'round';
  const build = blockBuilder(back, faces);
  const fitted = fitFace(
    {
      size: back.size,
      stepCount: STEPS,
      blocksAt: (step) => build(emForXHeightMm(xHeightAt(step), faces.regular)),
      regionOf: (size) => backRegion(back, size),
      align: isRound ? 'centre' : 'left',
      isCentredInHeight: isRound,
    },
    faces,
  );
  if (!fitted.ok) return fitted;
  return done({
    face: 'back',
    size: back.size,
    items: [...fitted.value.items, ...jarItems(back, faces)],
    smallestXHeightMm: xHeightAt(fitted.value.step),
  });
}

/** The last step is the smallest height itself, not a sum of steps that misses it by a rounding. */
const xHeightAt = (step: number): number =>
  step === STEPS - 1 ? SMALLEST_X_HEIGHT_MM : LARGEST_BACK_X_HEIGHT_MM - step * BACK_STEP_MM;

function jarItems(back: LabelBack, faces: Faces) {
  const box = jarBox(back.size);
  if (back.openedMonths === undefined || box === null) return [];
  return placeOpenJar(back.openedMonths, box, 'back.openedMonths', faces);
}

/** Round: as low as the circle takes it. Rectangle: the corner at the bottom right. Null where it does not fit. */
function jarBox(size: FaceSize): Box | null {
  const right = size.shape === 'round' ? (size.diameterMm + OPEN_JAR_WIDTH_MM) / 2 : size.widthMm - INSET_MM;
  const left = right - OPEN_JAR_WIDTH_MM;
  const bottom = size.shape === 'round' ? roundBottom(size.diameterMm / 2) : size.heightMm - INSET_MM;
  const top = bottom - OPEN_JAR_HEIGHT_MM;
  const isInside = insetRegion(size, INSET_MM).reachOf(top, bottom);
  const fits = isInside !== null && isInside.left <= left + 1e-6 && isInside.right >= right - 1e-6;
  return fits ? { left, right, top, bottom } : null;
}

/** Where a box of the jar's width touches the circle: Pythagoras with half the width. */
const roundBottom = (radius: number): number =>
  radius + Math.sqrt(Math.max(0, (radius - INSET_MM) ** 2 - (OPEN_JAR_WIDTH_MM / 2) ** 2));

function backRegion(back: LabelBack, size: FaceSize): Region | FlowFailure {
  const whole = insetRegion(size, INSET_MM);
  if (back.openedMonths === undefined) return whole;
  const jar = jarBox(size);
  if (jar === null) return { ok: false, element: 'back.openedMonths' };
  const topMm = jar.top - JAR_GAP_MM;
  if (size.shape === 'round') return { ...whole, bottomMm: topMm, reachOf: cutAt(whole, topMm) };
  const reachOf: Region['reachOf'] = (top, bottom) => {
    const reach = whole.reachOf(top, bottom);
    return reach === null || bottom <= topMm ? reach : { ...reach, right: jar.left - JAR_GAP_MM };
  };
  return { ...whole, reachOf };
}

const cutAt =
  (region: Region, bottomMm: number): Region['reachOf'] =>
  (top, bottom) =>
    bottom > bottomMm ? null : region.reachOf(top, bottom);

/** Text taken apart once; the size is all that changes from step to step. */
function blockBuilder(back: LabelBack, faces: Faces): (sizeMm: number) => Block[] {
  const parts = paragraphs(back).map(({ field, spans }) => ({
    element: `back.${field}`,
    content: contentOf(spans, faces),
  }));
  return (sizeMm) =>
    parts.map((part) => ({
      kind: 'text',
      ...part,
      sizeMm,
      gapMm: sizeMm * 0.5,
      leadingEm: 1.18,
      isBalanced: false,
    }));
}

interface Paragraph {
  readonly field: string;
  readonly spans: readonly Span[];
}

function paragraphs(back: LabelBack): Paragraph[] {
  const plain = (field: string, text: string | undefined): Paragraph[] =>
    text === undefined || text.trim() === '' ? [] : [{ field, spans: [{ text, weight: 'regular' }] }];
  return [
    headed('ingredientsText', printWords.label.ingredients, back.ingredientsText),
    ...plain('precautionsText', back.precautionsText),
    ...(back.otherLines ?? []).flatMap((line, index) => plain(`otherLines[${index}]`, line)),
    ...plain('durabilityText', back.durabilityText),
    headed('batchNumber', printWords.label.batch, back.batchNumber),
    ...plain('originText', back.originText),
    ...plain('responsiblePersonText', back.responsiblePersonText),
  ];
}

const headed = (field: string, heading: string, text: string): Paragraph => ({
  field,
  spans: [
    { text: `${heading} `, weight: 'bold' },
    { text, weight: 'regular' },
  ],
});
