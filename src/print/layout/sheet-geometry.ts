/** A bought sheet of labels, by what a ruler measures. Positions count from 1, left to right and then down. */
export interface SheetGeometry {
  readonly pageWidthMm: number;
  readonly pageHeightMm: number;
  readonly columns: number;
  readonly rows: number;
  /** From the page's edge to the first label. */
  readonly leftMm: number;
  readonly topMm: number;
  /** From the edge of one label to the same edge of the next. */
  readonly pitchAcrossMm: number;
  readonly pitchDownMm: number;
  readonly label:
    | { readonly shape: 'round'; readonly diameterMm: number }
    | {
        readonly shape: 'rectangle';
        readonly widthMm: number;
        readonly heightMm: number;
        readonly cornerRadiusMm?: number;
      };
}

export interface SheetRun {
  readonly title: string;
  /** Of each piece. */
  readonly copies: number;
  /** Where a begun sheet goes on; 1 unless said. Later sheets begin at 1. */
  readonly firstPosition?: number;
  /** For a printer that is off: to the right and down. */
  readonly offsetMm?: { readonly across: number; readonly down: number };
  /** A hairline round each label, for a trial on plain paper or for cutting by hand. */
  readonly hasOutlines?: boolean;
}
