import type { ExactInput } from '../../core/quantity/index.ts';
import type { LabelLanguage } from '../../words/index.ts';
import type { Surface, SurfaceRole } from './surface.ts';

/** Markets whose rules decide what a piece looks like. */
export type PrintMarket = 'GB' | 'NI' | 'EU' | 'US';

/** Everything that can stand on a label, in the order in which it is set where all of it stands on one piece. */
export const LABEL_ELEMENTS = [
  'brand',
  'name',
  'function',
  'content',
  'ingredients',
  'precautions',
  'other',
  'durability',
  'opened',
  'batch',
  'origin',
  'responsible',
] as const;
export type LabelElementKey = (typeof LABEL_ELEMENTS)[number];

/**
 * What may stand on a leaflet instead: particular precautions and the list of ingredients, where the label has no room
 * for practical reasons. Regulation (EC) No 1223/2009, Article 19(2); nothing else may go there.
 */
export const MOVABLE_ELEMENTS = ['precautions', 'ingredients'] as const;
export type MovableElement = (typeof MOVABLE_ELEMENTS)[number];

/** One text for every language of the label, or one for each; languages of the label that lack here are a problem. */
export type TextIn = string | Readonly<Partial<Record<LabelLanguage, string>>>;

/** What is to be said, once; which piece says it is the design's matter. Headings of the law are put before by the layout. */
export interface LabelWording {
  readonly brand?: TextIn;
  readonly name: TextIn;
  readonly function?: TextIn;
  readonly content: {
    readonly grams: ExactInput;
    /** Least height of the figures by law (Great Britain, Northern Ireland, European Union). */
    readonly figureHeightMm: number;
    /** The estimated sign: only for what is packed by the average system. */
    readonly hasEMark?: boolean;
  };
  /** Without its heading; label names have no language. */
  readonly ingredients: string;
  readonly precautions?: TextIn;
  readonly otherLines?: readonly TextIn[];
  /** A date (YYYY-MM-DD), or months after opening. Neither only where the market asks for neither. */
  readonly durability?: { readonly date: string; readonly sign?: 'words' | 'hourglass' };
  readonly openedMonths?: number;
  /** Without the word "Batch". */
  readonly batch: string;
  /** ISO 3166 code of two letters, where the country of origin has to stand there. */
  readonly originCountry?: string;
  /** Name and address. */
  readonly responsible: string;
  /** What the United States ask for before a name that is not the maker's; `maker` unless said. */
  readonly responsibleAs?: 'maker' | 'manufactured-by' | 'manufactured-for' | 'distributed-by';
}

export interface LabelDesign {
  readonly market: PrintMarket;
  /** In their order on the label; at least one. */
  readonly languages: readonly LabelLanguage[];
  readonly pieces: readonly DesignPiece[];
  /** Makes a further piece with these texts, and the other pieces point to it. */
  readonly leaflet?: LeafletDesign;
  /** Whole outside of the container in square millimetres, where known: the United States take smaller letters below 12 sq in. */
  readonly containerSurfaceMm2?: number;
}

/** One label that is stuck on. */
export interface DesignPiece {
  /** Names it among the pieces of the design: `lid`, `base`. */
  readonly id: string;
  readonly role: SurfaceRole;
  readonly surface: Surface;
  /** What stands on it; what its role asks for unless said (see ELEMENTS_OF_ROLE). */
  readonly elements?: readonly LabelElementKey[];
  readonly letters?: LetterLimits;
  readonly artwork?: Artwork;
  readonly code?: CodeWish;
}

export interface LeafletDesign {
  readonly surface: Surface;
  readonly elements: readonly MovableElement[];
  /** Hand in book (Annex VII, point 1), or short words. */
  readonly pointer: 'symbol' | 'words';
  readonly letters?: LetterLimits;
}

/** Height of lower-case letters, in millimetres. */
export interface LetterLimits {
  /** Not below SMALLEST_X_HEIGHT_MM. */
  readonly leastXHeightMm?: number;
  readonly mostXHeightMm?: number;
}

/** A picture, cut to the outline and its bleed. */
export interface Artwork {
  /** PNG or JPEG. */
  readonly bytes: Uint8Array;
  /** Behind the texts, or the whole face with its words in itself: then no text is set, and nothing of it can be measured. */
  readonly use: 'background' | 'whole-face';
  /** White behind the texts, so that they can be read over any picture; true unless said. */
  readonly isPlated?: boolean;
  /** How far it reaches beyond the cut. */
  readonly bleedMm: number;
}

/**
 * What a code is to hold; lot and date come from the wording. The date goes in as expiration date (17) unless it is said to
 * be a best-before date (15).
 */
export type CodeWish =
  | {
      readonly kind: 'digital-link';
      readonly domain: string;
      readonly gtin: string;
      readonly dateAs?: '15' | '17';
    }
  | { readonly kind: 'in-house' }
  | { readonly kind: 'ean-13'; readonly gtin: string };

/** A code with its content, as it is drawn. */
export type PieceCode = { readonly kind: 'qr' | 'ean-13'; readonly content: string };

/** A piece with its words, ready to be laid out: what composePieces makes of design and wording. */
export interface LabelPiece {
  readonly id: string;
  readonly role: SurfaceRole;
  readonly surface: Surface;
  readonly market: PrintMarket;
  readonly languages: readonly LabelLanguage[];
  /** Bold heading and text of each element that stands here, in order. */
  readonly texts: readonly PieceText[];
  /** Draws the open jar with this number of months. */
  readonly openedMonths?: number;
  /** Least height of the content's figures; in the United States the layout takes it from the area of the panel. */
  readonly figureHeightMm?: number;
  readonly hasEMark?: boolean;
  readonly hasHandInBook?: boolean;
  readonly leastXHeightMm: number;
  readonly mostXHeightMm: number;
  readonly containerSurfaceMm2?: number;
  readonly artwork?: Artwork;
  readonly code?: PieceCode;
}

export interface PieceText {
  readonly element: LabelElementKey | 'pointer';
  readonly heading: string;
  readonly text: string;
  /** A sign before the text: sand running out. */
  readonly sign?: 'hourglass';
}
