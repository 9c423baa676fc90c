/** Published heights that layout is held to; the catalogue binds them from the reference tables. */
export interface PrintRules {
  /** Of the estimated sign, in millimetres. */
  readonly eMarkHeightMm: number;
  readonly unitedStates: {
    /** Type of the net contents by area of the principal display panel. Half-open: over < area <= upTo. */
    readonly netHeights: readonly {
      readonly panelSquareInch: { readonly over: number; readonly upTo: number | null };
      readonly minHeightInch: number;
    }[];
    /** Lower-case letters of the ingredients. */
    readonly ingredients: {
      readonly minHeightInch: number;
      readonly smallMinHeightInch: number;
      /** Smaller letters are enough where the whole surface is below this. */
      readonly smallBelowSquareInch: number;
    };
  };
}
