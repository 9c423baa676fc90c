import { done, type Result } from '../../core/problem.ts';
import { type Block, contentOf } from './block.ts';
import { lowestFigureEm } from './content-size.ts';
import { emForXHeightMm, type Faces, type Weight } from './face.ts';
import { fitFace } from './fit-face.ts';
import type { FaceLayout, LabelFront } from './label.ts';
import {
  FIGURE_MARGIN_MM,
  INSET_MM,
  SMALLEST_NAME_X_HEIGHT_MM,
  SMALLEST_X_HEIGHT_MM,
} from './label-rules.ts';
import { type FaceSize, heightOf, insetRegion, widthOf } from './outline.ts';
import { prepareText } from './prepare-text.ts';

/** Ten steps from the wished size of the name down to its smallest. */
const STEPS = 10;

export interface FrontLayout extends FaceLayout {
  readonly figureHeightMm: number;
}

/** Brand, name, function, a short rule, and the declared content in heavy figures. */
export function layoutFront(front: LabelFront, faces: Faces): Result<FrontLayout> {
  const figuresEm = lowestFigureEm(front.declaredContentText, faces);
  const sizesAt = (step: number): FrontSizes => sizesOf(front, 1 - step / STEPS, figuresEm, faces);
  const isRound = front.size.shape === 'round';
  const build = blockBuilder(front, faces);
  const fitted = fitFace(
    {
      size: front.size,
      stepCount: STEPS + 1,
      blocksAt: (step) => build(sizesAt(step)),
      regionOf: (size) => insetRegion(size, INSET_MM),
      align: isRound ? 'centre' : 'left',
      isCentredInHeight: true,
    },
    faces,
  );
  if (!fitted.ok) return fitted;
  const sizes = sizesAt(fitted.value.step);
  return done({
    face: 'front',
    size: front.size,
    items: fitted.value.items,
    smallestXHeightMm: smallestXHeight(front, sizes, faces),
    figureHeightMm: sizes.content * figuresEm,
  });
}

interface FrontSizes {
  readonly name: number;
  readonly brand: number;
  readonly function: number;
  readonly content: number;
}

/** Shares of the face that look right from arm's length: common practice, no source. */
function sizesOf(front: LabelFront, share: number, figuresEm: number, faces: Faces): FrontSizes {
  const between = (least: number, most: number): number => least + Math.max(0, most - least) * share;
  const nameFloor = emForXHeightMm(SMALLEST_NAME_X_HEIGHT_MM, faces.bold);
  const floor = emForXHeightMm(SMALLEST_X_HEIGHT_MM, faces.regular);
  const wished = wishedNameMm(front, faces);
  const legal = (front.figureHeightMm + FIGURE_MARGIN_MM) / figuresEm;
  return {
    name: between(nameFloor, wished),
    brand: between(floor, wished * 0.44),
    function: between(floor, wished * 0.5),
    content: between(legal, wished * 0.66),
  };
}

/** A long name is set a little smaller from the start, so that two lines take it rather than three. */
function wishedNameMm({ size, productName }: LabelFront, faces: Faces): number {
  const boldest =
    size.shape === 'round' ? size.diameterMm * 0.12 : Math.min(widthOf(size) * 0.1, heightOf(size) * 0.18);
  const lineMm = (widthOf(size) - 2 * INSET_MM) * 0.85;
  const longerLineEm = faces.bold.advanceOf(prepareText(productName)) * 0.58;
  return Math.min(boldest, Math.max(boldest * 0.65, lineMm / longerLineEm));
}

function blockBuilder(front: LabelFront, faces: Faces): (sizes: FrontSizes) => Block[] {
  const content = (text: string | undefined, weight: Weight) =>
    text === undefined || text.trim() === '' ? null : contentOf([{ text, weight }], faces);
  const brand = content(front.brandName, 'semibold');
  const name = content(front.productName, 'bold');
  const purpose = content(front.functionText, 'regular');
  const declared = content(front.declaredContentText, 'bold');
  const text = (field: string, what: typeof name, sizeMm: number, gapMm: number): Block[] =>
    what === null
      ? []
      : [
          {
            kind: 'text',
            element: `front.${field}`,
            content: what,
            sizeMm,
            gapMm,
            leadingEm: 1.14,
            isBalanced: true,
          },
        ];
  return (sizes) => [
    ...text('brandName', brand, sizes.brand, 0),
    ...text('productName', name, sizes.name, sizes.name * 0.42),
    ...text('functionText', purpose, sizes.function, sizes.name * 0.3),
    ruleAbove(front.size, sizes),
    ...text('declaredContentText', declared, sizes.content, sizes.name * 0.42),
  ];
}

const ruleAbove = (size: FaceSize, sizes: FrontSizes): Block => ({
  kind: 'rule',
  element: 'front.rule',
  lengthMm: size.shape === 'round' ? size.diameterMm * 0.2 : widthOf(size),
  thicknessMm: 0.25,
  gapMm: sizes.name * 0.46,
});

function smallestXHeight(front: LabelFront, sizes: FrontSizes, faces: Faces): number {
  const heights = [sizes.name * faces.bold.xHeight];
  if (front.brandName) heights.push(sizes.brand * faces.semibold.xHeight);
  if (front.functionText) heights.push(sizes.function * faces.regular.xHeight);
  return Math.min(...heights);
}
