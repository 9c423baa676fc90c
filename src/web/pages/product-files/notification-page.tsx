import { useState } from 'react';
import { productFileWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { CopyButton } from '../../parts/copy-button.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import styles from './product-files.module.css';
import { useSayWords } from './use-say-words.ts';

const { notification: words } = productFileWords;
type Portal = keyof typeof words.portals;
const PORTALS = Object.entries(words.portals).map(([id, name]) => ({ id, name }));

/** Field by field, one tap each: it is typed in by the person, on the portal. */
export function NotificationPage() {
  const id = useParam('id');
  const say = useSayWords();
  const [market, setMarket] = useState<Portal>('GB');
  const read = useRead('getNotification', { params: { id }, query: { market } }, { keepsLast: true });
  return (
    <Loaded key={id} read={read} title={productFileWords.title}>
      {({ productName, sentence, rule, source, fields }) => (
        <Page
          title={words.title(productName)}
          above={words.title(productName)}
          says={<Sentence saying={sentence} />}
          soft={words.soft}
          actions={
            <>
              <LinkButton to={`/products/${id}/file/change`} hash="notification">
                {words.type}
              </LinkButton>
              <LinkButton to={`/products/${id}/file`}>{productFileWords.toFile}</LinkButton>
            </>
          }
          isNarrow
        >
          <RadioChoice
            title={words.portal}
            choices={PORTALS}
            value={market}
            onChange={(chosen) => setMarket(chosen as Portal)}
          />
          <p>{rule}</p>
          <p className="soft small">{words.source(source)}</p>
          <Card title={words.fields} isFlush>
            <List rows={fields} keyOf={({ key }) => key} empty="">
              {(field) => (
                <>
                  <ListRow>
                    <strong>{say(field.label)}</strong>
                    {field.gap === null && <CopyButton text={field.text}>{words.copy}</CopyButton>}
                  </ListRow>
                  {field.gap === null ? (
                    <p className={styles.copied}>{field.text}</p>
                  ) : (
                    <State kind="watch">{say(field.gap)}</State>
                  )}
                </>
              )}
            </List>
          </Card>
        </Page>
      )}
    </Loaded>
  );
}
