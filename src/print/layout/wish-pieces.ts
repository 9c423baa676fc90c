import { ELEMENTS_OF_ROLE } from './elements-of-role.ts';
import type { DesignPiece, LabelDesign, LabelElementKey } from './label-design.ts';

/** A piece and what is to stand on it, before there are words. */
export interface PieceWish {
  readonly piece: DesignPiece;
  readonly elements: readonly LabelElementKey[];
  /** It would have carried what went to the leaflet, and says so. */
  readonly isPointing: boolean;
}

export const LEAFLET_ID = 'leaflet';

/** What each piece is to carry: what a sticker has, the others leave out; what goes to the leaflet leaves all of them. */
export function wishPieces(design: LabelDesign): PieceWish[] {
  const wishes = design.pieces.map((piece) => wishPiece(piece, design));
  if (design.leaflet === undefined) return wishes;
  return [...letOnePoint(wishes), wishLeaflet(design.leaflet)];
}

function wishPiece(piece: DesignPiece, { pieces, leaflet }: LabelDesign): PieceWish {
  const moved: readonly LabelElementKey[] = leaflet?.elements ?? [];
  const onSticker = pieces
    .filter(({ role }) => role === 'sticker')
    .flatMap(({ role, elements }) => elements ?? ELEMENTS_OF_ROLE[role]);
  const usual = ELEMENTS_OF_ROLE[piece.role].filter(
    (element) => piece.role === 'sticker' || element === 'content' || !onSticker.includes(element),
  );
  const wanted = piece.elements ?? usual;
  return {
    piece,
    elements: wanted.filter((element) => !moved.includes(element)),
    isPointing: wanted.some((element) => moved.includes(element)),
  };
}

/** Where every piece names its elements itself and none was to carry what moved, the back says where it stands. */
function letOnePoint(wishes: readonly PieceWish[]): PieceWish[] {
  if (wishes.some(({ isPointing }) => isPointing)) return [...wishes];
  const order = ['back', 'whole', 'front', 'sticker'];
  const [first] = [...wishes].sort(
    (one, other) => order.indexOf(one.piece.role) - order.indexOf(other.piece.role),
  );
  return wishes.map((wish) => (wish === first ? { ...wish, isPointing: true } : wish));
}

/** It says of which product it is, so that it can be told from another; common practice, no source. */
const wishLeaflet = ({ elements, surface, letters }: NonNullable<LabelDesign['leaflet']>): PieceWish => ({
  piece: { id: LEAFLET_ID, role: 'leaflet', surface, ...(letters && { letters }) },
  elements: ['name', ...elements],
  isPointing: false,
});
