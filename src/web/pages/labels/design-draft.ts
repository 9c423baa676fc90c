import { done, type Problem, type Result, refused } from '../../../core/problem.ts';
import { readDecimal } from '../../../core/quantity/index.ts';
import { readWhole } from '../../show/read-whole.ts';
import type { DesignDetails } from './label.ts';

type PieceDetails = DesignDetails['pieces'][number];
export type Surface = PieceDetails['surface'];
export type Role = PieceDetails['role'];

/** What a ruler says, as it is typed; each shape takes what it needs. */
export interface SurfaceDraft {
  readonly shape: Surface['shape'];
  readonly diameterMm: string;
  readonly widthMm: string;
  readonly heightMm: string;
  readonly cornerRadiusMm: string;
  readonly circumferenceMm: string;
  readonly overlapMm: string;
}

export interface PieceDraft {
  readonly id: string;
  readonly role: Role;
  readonly surface: SurfaceDraft;
  readonly elements: PieceDetails['elements'];
  /** '': as is usual. */
  readonly leastMm: string;
  readonly mostMm: string;
  readonly code: PieceDetails['code'];
  readonly artwork: {
    readonly attachmentId: string;
    readonly use: NonNullable<PieceDetails['artwork']>['use'];
    readonly bleedMm: string;
  } | null;
  /** '': plain paper. */
  readonly sheetId: string;
}

export interface DesignDraft extends Omit<DesignDetails, 'pieces' | 'leaflet' | 'spare'> {
  readonly pieces: readonly PieceDraft[];
  readonly moves: DesignDetails['leaflet']['moves'];
  readonly pointer: DesignDetails['leaflet']['pointer'];
  readonly leafletSurface: SurfaceDraft;
  readonly spare: string;
}

/** Usual of a 60 ml tin and a jar of 120 ml (common practice, no source). */
const USUAL: SurfaceDraft = {
  shape: 'round',
  diameterMm: '50',
  widthMm: '60',
  heightMm: '40',
  cornerRadiusMm: '0',
  circumferenceMm: '200',
  overlapMm: '5',
};
const STICKER: SurfaceDraft = { ...USUAL, shape: 'rectangle', widthMm: '38', heightMm: '14' };

const draftOfSurface = (surface: Surface): SurfaceDraft => ({
  ...USUAL,
  ...Object.fromEntries(Object.entries(surface).map(([key, value]) => [key, String(value)])),
  shape: surface.shape,
});

export function newPiece(role: Role, taken: readonly string[]): PieceDraft {
  const free = [role, ...Array.from({ length: taken.length }, (_, index) => `${role}-${index + 2}`)];
  const id = free.find((one) => !taken.includes(one)) ?? role;
  const surface = role === 'sticker' ? STICKER : USUAL;
  return {
    id,
    role,
    surface,
    elements: null,
    leastMm: '',
    mostMm: '',
    code: 'none',
    artwork: null,
    sheetId: '',
  };
}

export const draftOfDesign = ({ pieces, leaflet, spare, ...details }: DesignDetails): DesignDraft => ({
  ...details,
  pieces: pieces.map(({ artwork, sheetId, surface, letters, ...piece }) => ({
    ...piece,
    leastMm: letters.leastMm === null ? '' : String(letters.leastMm),
    mostMm: letters.mostMm === null ? '' : String(letters.mostMm),
    surface: draftOfSurface(surface),
    artwork: artwork && { ...artwork, bleedMm: String(artwork.bleedMm) },
    sheetId: sheetId ?? '',
  })),
  moves: leaflet.moves,
  pointer: leaflet.pointer,
  leafletSurface: draftOfSurface(leaflet.surface),
  spare: String(spare),
});

/** Millimetres of a drawing: a JavaScript number is exact enough to print with. */
export function readMm(typed: string, where: string): Result<number> {
  const read = readDecimal(typed, where);
  return read.ok ? done(read.value.toNumber()) : read;
}

const NEEDED = {
  round: ['diameterMm'],
  rectangle: ['widthMm', 'heightMm', 'cornerRadiusMm'],
  wrap: ['circumferenceMm', 'heightMm', 'overlapMm'],
} as const;

/** All of several readings, or everything that is wrong with any of them. */
function readAll<Key extends string>(
  typed: Readonly<Record<Key, string>>,
  keys: readonly Key[],
  where: string,
): Result<Record<Key, number>> {
  const reads = keys.map((key) => [key, readMm(typed[key], `${where}.${key}`)] as const);
  const problems = reads.flatMap(([, read]) => (read.ok ? [] : read.problems));
  if (problems.length > 0) return refused(...problems);
  return done(
    Object.fromEntries(reads.flatMap(([key, read]) => (read.ok ? [[key, read.value]] : []))) as Record<
      Key,
      number
    >,
  );
}

export function readSurface(draft: SurfaceDraft, where: string): Result<Surface> {
  const { shape } = draft;
  const read = readAll(draft, NEEDED[shape], where);
  return read.ok ? done({ shape, ...read.value } as Surface) : read;
}

const readLetter = (typed: string, where: string): Result<number | null> =>
  typed.trim() === '' ? done(null) : readMm(typed, where);

function readPiece(
  { surface, artwork, sheetId, leastMm, mostMm, ...piece }: PieceDraft,
  where: string,
): Result<PieceDetails> {
  const face = readSurface(surface, `${where}.surface`);
  const bleed = artwork ? readMm(artwork.bleedMm, `${where}.artwork.bleedMm`) : done(0);
  const least = readLetter(leastMm, `${where}.letters.leastMm`);
  const most = readLetter(mostMm, `${where}.letters.mostMm`);
  if (!face.ok || !bleed.ok || !least.ok || !most.ok)
    return refused(...[face, bleed, least, most].flatMap((read) => (read.ok ? [] : read.problems)));
  return done({
    ...piece,
    letters: { leastMm: least.value, mostMm: most.value },
    surface: face.value,
    artwork: artwork && { ...artwork, bleedMm: bleed.value },
    sheetId: sheetId === '' ? null : sheetId,
  });
}

export function readDesignDraft(draft: DesignDraft): Result<DesignDetails> {
  const { moves, pointer, leafletSurface, ...rest } = draft;
  const pieces = draft.pieces.map((piece, index) => readPiece(piece, `details.pieces[${index}]`));
  const surface = readSurface(leafletSurface, 'details.leaflet.surface');
  const spare = readWhole(draft.spare, 'details.spare');
  const isLeafletWrong = moves !== 'none' && !surface.ok;
  const problems: Problem[] = [
    ...pieces.flatMap((piece) => (piece.ok ? [] : piece.problems)),
    ...(isLeafletWrong && !surface.ok ? surface.problems : []),
    ...(spare.ok ? [] : spare.problems),
  ];
  if (problems.length > 0 || !spare.ok) return refused(...problems);
  const usual: Surface = { shape: 'rectangle', widthMm: 74, heightMm: 105, cornerRadiusMm: 0 };
  return done({
    ...rest,
    pieces: pieces.flatMap((piece) => (piece.ok ? [piece.value] : [])),
    leaflet: { moves, pointer, surface: surface.ok ? surface.value : usual },
    spare: spare.value,
  });
}

/** With what was on the label moved to the leaflet too. */
export const withMoved = (
  moves: DesignDraft['moves'],
  more: 'precautions' | 'ingredients',
): DesignDraft['moves'] => (moves === 'none' || moves === more ? more : 'both');
