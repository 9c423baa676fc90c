import type { Fraction, Stretch } from '../linear/index.ts';
import type { RuleTold } from './told.ts';

/** What no longer holds once an amount has gone too far. */
export type RoomBreak =
  /** Of law, IFRA, supplier. */
  | { readonly what: 'limit'; readonly name: string; readonly told: RuleTold }
  /** Outside the range that the assessor's report has for it. */
  | {
      readonly what: 'report';
      readonly name: string;
      readonly told: RuleTold;
      readonly side: 'most' | 'least';
    }
  /** An allergen that the label does not name yet, or that it names and need not. */
  | { readonly what: 'name-added' | 'name-dropped'; readonly name: string }
  /** In the list of ingredients the first may no longer stand before the second. */
  | { readonly what: 'order'; readonly first: string; readonly second: string }
  /** Nothing of it is left in the product. */
  | { readonly what: 'leaves-list'; readonly name: string };

export type RoomKind = 'label' | 'report' | 'limit';

export const kindOfBreak = ({ what }: RoomBreak): RoomKind =>
  what === 'limit' || what === 'report' ? what : 'label';

/** Where one line's amount breaks something: all its amounts that do. */
export interface RoomStop {
  readonly breaks: RoomBreak;
  /** Where it holds, in the words of whoever asked. */
  readonly about: readonly string[];
  readonly outside: Stretch;
}

/** Something that is counted: so much of each percent of each line, and what it comes to now. */
export interface Counted {
  readonly weights: readonly Fraction[];
  readonly now: Fraction;
}
