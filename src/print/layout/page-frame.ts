/** A4 portrait (ISO 216), margins that a home printer keeps and that leave room for a punch. */
export const PAGE_WIDTH_MM = 210;
export const PAGE_HEIGHT_MM = 297;
export const LEFT_MM = 18;
export const TEXT_WIDTH_MM = PAGE_WIDTH_MM - 2 * LEFT_MM;
export const FIRST_TOP_MM = 16;
export const NEXT_TOP_MM = 24;
export const BODY_BOTTOM_MM = 277;
export const FOOTER_MM = 283;
