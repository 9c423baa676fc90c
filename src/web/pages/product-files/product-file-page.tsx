import { useState } from 'react';
import { productFileWords } from '../../../words/index.ts';
import { requestUrl } from '../../api/request-url.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { buttonClass } from '../../parts/button-look.ts';
import { FoldedCard } from '../../parts/folded-card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { ChapterText } from './chapter-card.tsx';
import { ChapterFiles } from './chapter-files.tsx';
import { ChapterState } from './chapter-state.tsx';
import { MissingCard } from './missing-card.tsx';
import { PartsCard } from './parts-card.tsx';
import styles from './product-files.module.css';
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

/** Its parts with their states, and what is missing; then the file, heading by heading, in the law's order. */
function ProductFileView({ file }: { readonly file: AnswerOf<'getProductFile'> }) {
  const say = useSayWords();
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set<string>());
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
      <div className={styles.top}>
        <PartsCard
          chapters={file.chapters}
          areAllOpen={open.size === file.chapters.length}
          onOpenAll={(areOpen) => setOpen(new Set(areOpen ? file.chapters.map(({ key }) => key) : []))}
        />
        <MissingCard missing={file.missing} />
      </div>
      <div className={styles.folds}>
        {file.chapters.map((chapter) => (
          <FoldedCard
            key={chapter.key}
            title={say(chapter.title)}
            anchor={chapter.key}
            aside={<ChapterState chapter={chapter} />}
            isOpen={open.has(chapter.key)}
            onToggle={(isOpen) => setOpen((now) => withPart(now, chapter.key, isOpen))}
          >
            <ChapterText chapter={chapter} />
            <ChapterFiles productId={file.productId} chapter={chapter} title={say(chapter.title)} />
          </FoldedCard>
        ))}
      </div>
    </Page>
  );
}

function withPart(open: ReadonlySet<string>, key: string, isOpen: boolean): ReadonlySet<string> {
  if (open.has(key) === isOpen) return open;
  return new Set(isOpen ? [...open, key] : [...open].filter((one) => one !== key));
}
