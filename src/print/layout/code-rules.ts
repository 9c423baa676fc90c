/**
 * Sizes of codes.
 * QR: four modules of white all round (ISO/IEC 18004, from memory); at a till a module of 0.396 to 0.990 mm (GS1 General
 * Specifications, 5.12.3.1, read in a national GS1 guide). Here 0.4 mm at the least, which is above that, and 0.5 mm where
 * there is room.
 * EAN-13: a module of 0.33 mm, 0.264 mm at the least; bars 22.85 mm high at 0.33 and in the same share below; 11 modules of
 * white to the left, 7 to the right (GS1 General Specifications, read in a national GS1 size guide). Guard bars reach 5
 * modules lower (from memory).
 */
export const QR_MODULES_MM = [0.5, 0.4] as const;
export const QR_QUIET_MODULES = 4;

export const EAN_MODULES_MM = [0.33, 0.264] as const;
export const EAN_QUIET_LEFT_MODULES = 11;
export const EAN_QUIET_RIGHT_MODULES = 7;
/** 22.85 mm at a module of 0.33 mm; the guide's 18.28 mm at 0.264 mm is the same share. */
export const EAN_HEIGHT_MODULES = 22.85 / 0.33;
export const EAN_GUARD_MODULES = 5;
