/**
 * Cosmetics law wants lettering "indelible, easily legible and visible" (Regulation (EC) No 1223/2009, Article 19(1)) and gives
 * no letter height; only the figures of the net quantity have one. The heights here are common practice, no source.
 */

/** Lower-case letters are never set below this. */
export const SMALLEST_X_HEIGHT_MM = 0.9;
/** Wished for on the front, where one reads from an arm's length. */
export const SMALLEST_NAME_X_HEIGHT_MM = 1.2;
/** The back starts here and goes down in steps to the smallest. */
export const LARGEST_BACK_X_HEIGHT_MM = 1.4;

/** On top of the legal height of figures, so that toner and scale of a good printer stay on the right side. */
export const FIGURE_MARGIN_MM = 0.1;

/** Nothing stands nearer to the cut than this. Common practice, no source. */
export const INSET_MM = 2;

/** On a sticker that comes ready cut. Common practice, no source. */
export const STICKER_INSET_MM = 1;
