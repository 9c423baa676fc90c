import { productFileWords } from '../../../words/index.ts';
import { requestUrl } from '../../api/request-url.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { buttonClass } from '../../parts/button-look.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { ChapterCard } from './chapter-card.tsx';
import { PointsCard } from './points-card.tsx';
import { useSayWords } from './use-say-words.ts';
import { WrittenFacts } from './written-facts.tsx';

const { worksheet: words } = productFileWords;

/** Of the newest revision of a formula, be it a trial. */
export function WorksheetPage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getFormula', { params: { id } })} title={words.title}>
      {({ latest }) => (latest ? <WorksheetOf formulaId={id} revisionId={latest.id} /> : <NotFound />)}
    </Loaded>
  );
}

interface Props {
  readonly formulaId: string;
  readonly revisionId: string;
}

const WorksheetOf = ({ formulaId, revisionId }: Props) => (
  <Loaded
    read={useRead('getWorksheet', { params: { id: revisionId } }, { keepsLast: true })}
    title={words.title}
  >
    {(paper) => <WorksheetView paper={paper} formulaId={formulaId} revisionId={revisionId} />}
  </Loaded>
);

function WorksheetView({
  paper,
  formulaId,
  revisionId,
}: Props & { readonly paper: AnswerOf<'getWorksheet'> }) {
  const say = useSayWords();
  const address = { params: { id: revisionId } };
  return (
    <Page
      title={say(paper.title)}
      above={say(paper.title)}
      says={<Sentence saying={paper.sentence} />}
      soft={say(paper.subtitle)}
      actions={
        <>
          <a className={buttonClass({ isAct: true })} href={requestUrl('getAssessorZip', address)} download>
            {words.send}
          </a>
          <PrintLink paper="getWorksheetPdf" address={address}>
            {words.pdf}
          </PrintLink>
          <LinkButton to={`/formulas/${formulaId}`}>{productFileWords.toFormula}</LinkButton>
        </>
      }
    >
      <WrittenFacts facts={paper.facts} />
      <PointsCard />
      {paper.chapters.map((chapter) => (
        <ChapterCard key={chapter.key} chapter={chapter} />
      ))}
    </Page>
  );
}
