import type { AnswerOf } from '../../api/shapes.ts';
import { Sentence } from '../../parts/sentence.tsx';

type Former = AnswerOf<'listFormerDecisions'>;

/** To be read where it has to be decided again. */
export const FormerlyDecided = ({ decisions }: { readonly decisions: Former }) =>
  decisions.map(({ entryId, revision, verdict, by, at, reason }) => (
    <p key={entryId} className="small">
      <Sentence
        saying={{ code: 'decision-formerly', parameters: { number: revision, verdict, by, on: at, reason } }}
      />
    </p>
  ));
