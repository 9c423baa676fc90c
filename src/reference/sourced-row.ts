/** How a value is known, strongest first. A row is as strong as its weakest value. */
export type Confidence =
  /** Seen in the text of the source named, or in a document that quotes it. */
  | 'read'
  /** Seen quoted by another party only. */
  | 'read-secondary'
  /** Calculated from a definition or formula. */
  | 'computed'
  /** Worked out or judged from other values of the tables. */
  | 'derived'
  /** Recalled; nobody has seen the printed page yet: shown as "from memory, check". */
  | 'memory';

export interface ReferenceSource {
  readonly id: string;
  readonly title: string;
  readonly where: string;
  /** Whether somebody has read it; a source that was not read gives rows from memory or from a quotation. */
  readonly read: boolean;
  readonly note?: string;
}

export interface Evidence {
  readonly source: string;
  readonly confidence: Confidence;
}

/** Every row of a table: `source` and `confidence` hold for each value that has none of its own in `evidence`. */
export interface SourcedRow extends Evidence {
  /** kebab-case, unique in its table. */
  readonly id: string;
  readonly alsoSources?: readonly string[];
  readonly evidence?: Readonly<Record<string, Evidence>>;
}

/** Half-open: over < value <= upTo, so that each value has one owner; `upTo: null` has no end. */
export interface Band {
  readonly over: number;
  readonly upTo: number | null;
}
