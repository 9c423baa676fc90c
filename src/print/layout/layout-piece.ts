import { done, problem, type Result, refused } from '../../core/problem.ts';
import { labelPrintWords } from '../../words/index.ts';
import type { Block } from './block.ts';
import { checkPiece, nameOfPlace } from './check-piece.ts';
import { sizeContent } from './content-size.ts';
import { faceOfSurface } from './face-of-surface.ts';
import type { LabelPiece } from './label-design.ts';
import { layoutPanel, type PanelLayout } from './layout-panel.ts';
import { smallestXHeightOf } from './panel-blocks.ts';
import { type PanelPlace, panelsOf } from './panels-of.ts';
import { symbolsOf } from './piece-fixtures.ts';
import type { LayoutTools, PieceLayout } from './piece-layout.ts';
import { type PlacedArtwork, placeArtwork } from './place-artwork.ts';
import { drawCode } from './place-code.ts';
import { placePlates } from './place-plates.ts';
import { moveBy, type Placed } from './placed.ts';
import type { Fixture } from './symbol-row.ts';

/**
 * Sets one piece at true size on its real outline, in the largest letters that fit. Refused with everything that is wrong:
 * measures, letters that the font lacks, a code that cannot be written or finds no room, a picture that cannot be used, and each
 * element that does not fit, with the millimetres that it lacks.
 */
export function layoutPiece(piece: LabelPiece, tools: LayoutTools): Result<PieceLayout> {
  const wrong = checkPiece(piece, tools.faces);
  if (wrong.length > 0) return { ok: false, problems: wrong };
  const size = faceOfSurface(piece.surface);
  const artwork = piece.artwork === undefined ? null : placeArtwork(piece.artwork, size, piece.id);
  if (artwork?.ok === false) return artwork;
  if (piece.artwork?.use === 'whole-face' && artwork !== null)
    return done(pictureAlone(piece, artwork.value));
  const set = setTexts(piece, tools);
  return set.ok ? done(joinParts(piece, set.value, artwork?.value ?? null, tools)) : set;
}

interface SetTexts {
  readonly panels: readonly (readonly [PanelPlace, PanelLayout])[];
  readonly fixtures: readonly Fixture[];
}

/** The largest code with which the texts find room; a smaller one before a refusal. */
function setTexts(piece: LabelPiece, tools: LayoutTools): Result<SetTexts> {
  const { code, id } = piece;
  const drawn = code === undefined ? [null] : drawCode(code, tools.codes, tools.faces, `${id}.code`);
  if (drawn === null) {
    return refused(problem('code-not-writable', `${id}.code`, { found: code?.content ?? '' }));
  }
  let last: Result<SetTexts> | undefined;
  for (const fixture of drawn) {
    last = setWith(piece, [...symbolsOf(piece, tools.faces), ...(fixture ? [fixture] : [])], tools);
    if (last.ok) return last;
  }
  if (last === undefined) throw new Error('a code has at least one size');
  return last;
}

function setWith(piece: LabelPiece, fixtures: readonly Fixture[], tools: LayoutTools): Result<SetTexts> {
  const names = { piece: labelPrintWords.roles[piece.role], element: nameOfPlace };
  const set = panelsOf(piece, fixtures, tools).map(
    (place) => [place, layoutPanel(place.panel, names, tools.faces)] as const,
  );
  const problems = set.flatMap(([, panel]) => (panel.ok ? [] : panel.problems));
  if (problems.length > 0) return { ok: false, problems };
  const panels = set.flatMap(([place, panel]) => (panel.ok ? [[place, panel.value] as const] : []));
  return done({ panels, fixtures });
}

function joinParts(
  piece: LabelPiece,
  { panels, fixtures }: SetTexts,
  artwork: PlacedArtwork | null,
  tools: LayoutTools,
): PieceLayout {
  const moved = panels.map(([{ xMm }, panel]) => ({
    items: panel.items.map((item): Placed => moveBy(item, xMm, 0)),
    boxes: panel.boxes.map((box) => ({ ...box, left: box.left + xMm, right: box.right + xMm })),
  }));
  const items = moved.flatMap((panel) => panel.items);
  const isPlated = artwork !== null && piece.artwork?.isPlated !== false;
  const plates = isPlated
    ? placePlates(
        items,
        moved.flatMap(({ boxes }) => boxes),
        piece.id,
      )
    : [];
  const blocks = panels.flatMap(([, panel]) => panel.blocks);
  return {
    ...headOf(piece),
    items: [...(artwork ? [artwork.image] : []), ...plates, ...items],
    smallestXHeightMm: smallestXHeightOf(blocks, tools.faces),
    ...contentHeights(piece, blocks, tools),
    moduleMm: fixtures.find(({ moduleMm }) => moduleMm !== undefined)?.moduleMm ?? null,
    alts: altsOf(piece, fixtures),
    notes: artwork?.notes ?? [],
  };
}

const headOf = ({ id, role, surface, artwork }: LabelPiece) => ({
  id,
  role,
  surface,
  size: faceOfSurface(surface),
  bleedMm: artwork?.bleedMm ?? 0,
});

function altsOf({ id }: LabelPiece, fixtures: readonly Fixture[]): Record<string, string> {
  const { artwork, hourglass } = labelPrintWords.alt;
  return {
    ...Object.fromEntries(fixtures.map(({ element, alt }) => [element, alt])),
    [`${id}.artwork`]: artwork,
    [`${id}.hourglass`]: hourglass,
  };
}

function contentHeights(piece: LabelPiece, blocks: readonly Block[], { rules, faces }: LayoutTools) {
  const text = piece.texts.find(({ element }) => element === 'content')?.text;
  const block = blocks.find(({ element }) => element === `${piece.id}.content`);
  if (text === undefined || block?.kind !== 'text') return { figureHeightMm: null, eMarkHeightMm: null };
  const { measuredEm, eMarkEm } = sizeContent(text, piece, rules, faces);
  return {
    figureHeightMm: block.sizeMm * measuredEm,
    eMarkHeightMm: eMarkEm === null ? null : block.sizeMm * eMarkEm,
  };
}

const pictureAlone = (piece: LabelPiece, { image, notes }: PlacedArtwork): PieceLayout => ({
  ...headOf(piece),
  items: [image],
  smallestXHeightMm: 0,
  figureHeightMm: null,
  eMarkHeightMm: null,
  moduleMm: null,
  alts: altsOf(piece, []),
  notes,
});
