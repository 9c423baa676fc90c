import { type Exact, gramsFromMicrograms } from '../../core/quantity/index.ts';

export const netGramsOf = (row: { readonly gross_ug: number; readonly tare_ug: number }): Exact =>
  gramsFromMicrograms(row.gross_ug - row.tare_ug);
