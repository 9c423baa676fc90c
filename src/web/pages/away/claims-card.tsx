import { awayWords } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import { type Claim, ClaimLine } from './claim-line.tsx';
import styles from './claims.module.css';

/** Of one batch or run: what asks for an answer, above everything else. */
export function OpenClaims({ claims }: { readonly claims: readonly Claim[] }) {
  const open = claims.filter(({ answer }) => answer === null);
  if (open.length === 0) return null;
  return (
    <section className={styles.open} aria-label={awayWords.claims.title}>
      <State kind="stop">{awayWords.claims.says(open.length)}</State>
      {open.map((claim) => (
        <ClaimLine key={claim.id} claim={claim} />
      ))}
    </section>
  );
}
