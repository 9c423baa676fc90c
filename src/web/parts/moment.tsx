import { sayInstant } from '../../words/index.ts';
import { useTimeZone } from '../api/use-time-zone.ts';

/** An instant on the workshop's clock. */
export const Moment = ({ at }: { readonly at: string }) => (
  <time dateTime={at}>{sayInstant(at, useTimeZone())}</time>
);
