export type LimitKind = 'law' | 'ifra' | 'supplier' | 'assessor';

/** The rule that a verdict was judged by. */
export interface RuleTold {
  readonly kind?: LimitKind;
  readonly entry?: string;
  readonly edition?: string;
  /** The rule's own name and where it stands. */
  readonly source?: string;
  /** Where it stands, without its name: for a sentence that has named the substance already. */
  readonly citation?: string;
  readonly confidence?: string;
  readonly ruleId?: string;
  /** The value must lie below the limit; else the limit itself is allowed. */
  readonly isStrict?: boolean;
  /** A scientific opinion, not law. */
  readonly force?: 'opinion';
  /** What the figure counts, where it is not the substance itself. */
  readonly asWhat?: string;
  /** Exact label text that the rule asks for. */
  readonly warning?: string;
}

/** What an answer says of the members that it counts. */
export interface Told {
  /** The input's name; where several members are summed, the rule's. */
  readonly name: string;
  readonly percent: number;
  readonly typicalPercent?: number;
  readonly members: readonly string[];
  /** CAS numbers of a single member: two tubs may have one label name. */
  readonly numbers?: readonly string[];
  /** The weakest confidence of the amounts. */
  readonly amountConfidence?: string;
  readonly fromMaterials?: readonly string[];
}
