import { productFileWords } from '../../../words/index.ts';
import { requestUrl } from '../../api/request-url.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { buttonClass } from '../../parts/button-look.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { ChapterCard } from './chapter-card.tsx';
import { ChapterFiles } from './chapter-files.tsx';
import { MissingCard } from './missing-card.tsx';
import { useSayWords } from './use-say-words.ts';
import { WrittenFacts } from './written-facts.tsx';

export function ProductFilePage() {
  const id = useParam('id');
  return (
    <Loaded
      key={id}
      read={useRead('getProductFile', { params: { id } }, { keepsLast: true })}
      title={productFileWords.title}
    >
      {(file) => <ProductFileView file={file} />}
    </Loaded>
  );
}

/** What is missing first, then the file, heading by heading, in the law's order. */
function ProductFileView({ file }: { readonly file: AnswerOf<'getProductFile'> }) {
  const say = useSayWords();
  const address = { params: { id: file.productId } };
  return (
    <Page
      title={`${productFileWords.title}: ${file.productName}`}
      above={`${productFileWords.title} · ${file.productName}`}
      says={<Sentence saying={file.sentence} />}
      soft={say(file.subtitle)}
      actions={
        <>
          <LinkButton to={`/products/${file.productId}/file/change`} isAct>
            {productFileWords.write}
          </LinkButton>
          <PrintLink paper="getProductFilePdf" address={address}>
            {productFileWords.pdf}
          </PrintLink>
          <a className={buttonClass({})} href={requestUrl('getProductFileZip', address)} download>
            {productFileWords.zip}
          </a>
          <LinkButton to={`/products/${file.productId}/notification`}>{productFileWords.notify}</LinkButton>
        </>
      }
    >
      <WrittenFacts facts={file.facts} />
      <MissingCard missing={file.missing} />
      {file.chapters.map((chapter) => (
        <ChapterCard key={chapter.key} chapter={chapter} hasState>
          <ChapterFiles productId={file.productId} chapter={chapter} title={say(chapter.title)} />
        </ChapterCard>
      ))}
    </Page>
  );
}
