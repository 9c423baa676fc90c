import { awayWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { type Claim, ClaimLine } from './claim-line.tsx';

/** On the record: what came from a tablet that was away, and what a person said of it. */
export function AnsweredClaims({ claims }: { readonly claims: readonly Claim[] }) {
  const answered = claims.filter(({ answer }) => answer !== null);
  if (answered.length === 0) return null;
  return (
    <Card title={awayWords.claims.title}>
      {answered.map((claim) => (
        <ClaimLine key={claim.id} claim={claim} />
      ))}
    </Card>
  );
}
