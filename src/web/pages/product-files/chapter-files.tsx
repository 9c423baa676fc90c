import { useId } from 'react';
import type { productFiles } from '../../../contract/index.ts';
import { productFileWords } from '../../../words/index.ts';
import { readBase64 } from '../../api/read-base64.ts';
import { requestUrl } from '../../api/request-url.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { buttonClass } from '../../parts/button-look.ts';
import { PrintLink } from '../../parts/print-link.tsx';
import { Problems } from '../../parts/problems.tsx';
import styles from './product-files.module.css';

type Chapter = productFiles.Chapter;

interface Props {
  readonly productId: string;
  readonly chapter: Chapter;
  readonly title: string;
}

/** What lies under a heading: opened, put there, taken out. */
export function ChapterFiles({ productId, chapter, title }: Props) {
  const id = useId();
  const attach = useWrite('fileUnderHeading');
  const takeOut = useWrite('takeFileOut');
  if (!chapter.mayAttach) return null;
  const heading = chapter.key as productFiles.FileHeading;
  const params = { id: productId };
  async function take(file: File | undefined) {
    if (file)
      await attach.write({ params, body: { heading, name: file.name, base64: await readBase64(file) } });
  }
  return (
    <div className={styles.files}>
      <Problems problems={[...attach.problems, ...takeOut.problems]} />
      {chapter.files.map((file) => (
        <div key={file.id} className={styles.file}>
          <div className={styles.attached}>
            {file.kind !== 'pdf' && (
              <img
                className={styles.picture}
                src={requestUrl('getAttachment', { params: { id: file.id } })}
                alt={file.name}
                loading="lazy"
              />
            )}
            <PrintLink paper="getAttachment" address={{ params: { id: file.id } }}>
              {file.name}
            </PrintLink>
          </div>
          <Button
            label={productFileWords.takeOutOf(file.name)}
            onPress={() => void takeOut.write({ params, body: { heading, attachmentId: file.id } })}
          >
            {productFileWords.takeOut}
          </Button>
        </div>
      ))}
      <div>
        <label htmlFor={id} className={buttonClass({})}>
          {productFileWords.attach}
          <span className="visually-hidden"> {title}</span>
        </label>
        <input
          id={id}
          className="visually-hidden"
          type="file"
          accept="application/pdf,image/png,image/jpeg"
          onChange={(event) => void take(event.target.files?.[0])}
        />
        <span className="soft small"> {productFileWords.attachHint}</span>
      </div>
    </div>
  );
}
