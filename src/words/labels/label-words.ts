/** The words that stand ready for a label, in one language. */
export interface LabelWords {
  /** Before the list; Regulation (EC) No 1223/2009, Article 19(1)(g). */
  readonly ingredients: string;
  /** Before the batch number. */
  readonly batch: string;
  /** Before the date of minimum durability: the words of Article 19(1)(c) in this language version. */
  readonly bestBefore: string;
  /** Country of origin, with the country's name. */
  readonly madeIn: (country: string) => string;
  /** Before the net content, where a market wants words. */
  readonly netWeight: string;
  /** Abbreviated wording that refers to enclosed information; Article 19(2). */
  readonly seeLeaflet: string;
  /** Where the words come from and how far they were read. */
  readonly source: string;
}
