import { productFileWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { ChapterCard } from './chapter-card.tsx';
import { useSayWords } from './use-say-words.ts';
import { WrittenFacts } from './written-facts.tsx';

const { changes: words } = productFileWords;

/** For the assessor, when a report is renewed. */
export function ReportChangesPage() {
  const id = useParam('id');
  const say = useSayWords();
  return (
    <Loaded key={id} read={useRead('getReportChanges', { params: { id } })} title={words.title}>
      {(paper) => (
        <Page
          title={say(paper.title)}
          above={say(paper.title)}
          says={<Sentence saying={paper.sentence} />}
          soft={say(paper.subtitle)}
          actions={
            <>
              <PrintLink paper="getReportChangesPdf" address={{ params: { id } }} isAct>
                {words.pdf}
              </PrintLink>
              <LinkButton to="/reports">{productFileWords.toReports}</LinkButton>
            </>
          }
        >
          <WrittenFacts facts={paper.facts} />
          {paper.chapters.map((chapter) => (
            <ChapterCard key={chapter.key} chapter={chapter} />
          ))}
        </Page>
      )}
    </Loaded>
  );
}
