import type PDFDocument from 'pdfkit';

export type Pdf = InstanceType<typeof PDFDocument>;

export const POINTS_PER_MM = 72 / 25.4;
export const points = (mm: number): number => mm * POINTS_PER_MM;
