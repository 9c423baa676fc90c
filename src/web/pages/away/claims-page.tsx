import { awayWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { Page } from '../../shell/page.tsx';
import { type Claim, ClaimLine } from './claim-line.tsx';

const { claims: words } = awayWords;

/** Everything from tablets that were away and nobody has answered, the oldest first. */
export const ClaimsPage = () => (
  <Loaded read={useRead('listClaims')} title={words.page}>
    {(claims) => (
      <Page title={words.page} above={words.page} says={words.says(claims.length)} soft={words.soft} isNarrow>
        {claims.map((claim) => (
          <Card key={claim.id} title={<Where claim={claim} />}>
            <ClaimLine claim={claim} />
          </Card>
        ))}
      </Page>
    )}
  </Loaded>
);

function Where({ claim: { subjectKind, subjectId, subjectNumber } }: { readonly claim: Claim }) {
  if (subjectNumber === null) return words.title;
  return subjectKind === 'batch' ? (
    <TextLink to={`/making/${subjectId}`}>{words.toBatch(subjectNumber)}</TextLink>
  ) : (
    <TextLink to={`/filling/${subjectId}`}>{words.toRun(subjectNumber)}</TextLink>
  );
}
