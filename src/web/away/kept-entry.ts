import type { RouteName, Stamp } from '../../contract/index.ts';

/** An entry as it lies on this tablet: everything that its request needs, with the stamp that it will always be sent with. */
export interface KeptEntry {
  /** The stamp's: the same entry sent twice counts once. */
  readonly id: string;
  readonly route: RouteName;
  readonly params: Readonly<Record<string, string>>;
  readonly body: object & { readonly stamp: Stamp };
  /** When it happened, by this tablet's clock. */
  readonly at: string;
  /** `asked`: somebody stands before the screen of `tab` and waits for the answer; `waiting`: nobody does. */
  readonly state: 'asked' | 'waiting';
  readonly tab: string;
  /** Until when `asked` holds, in milliseconds since 1970: a tab that was closed asks no more. */
  readonly until: number;
}
