import { Sentence } from '../../parts/sentence.tsx';
import { State, type StateKind } from '../../parts/state.tsx';
import type { Check } from './check.ts';

const KINDS = { yes: 'ready', decide: 'watch', no: 'stop' } as const satisfies Record<string, StateKind>;

/** What the lots on the shelf make of the answer, by their certificates. */
export const ShelfAnswers = ({ shelf }: { readonly shelf: Check['shelf'] }) => (
  <>
    {shelf.map(({ answer, says }) => (
      <p key={JSON.stringify(says)}>
        <State kind={KINDS[answer]}>
          <Sentence saying={says} />
        </State>
      </p>
    ))}
  </>
);
