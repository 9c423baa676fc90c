import { useState } from 'react';
import { checkWords, labelWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { problemsOf } from '../../api/problems-of.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useRead } from '../../api/use-read.ts';
import { useSettled } from '../../api/use-settled.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Select } from '../../parts/select.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { State } from '../../parts/state.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { Page } from '../../shell/page.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { useParam } from '../../shell/use-param.ts';
import { describeDesign } from './describe-design.ts';
import { type DesignDraft, draftOfDesign, readDesignDraft, withMoved } from './design-draft.ts';
import { DesignFields } from './design-fields.tsx';
import { Elements } from './elements.tsx';
import styles from './label.module.css';
import type { Label, LabelDesign, LabelNote } from './label.ts';
import { Notes } from './notes.tsx';
import { PieceFigure } from './piece-figure.tsx';

const { design: words } = labelWords;
type Market = Label['market'];

export function DesignPage() {
  const id = useParam('id');
  const read = useRead('getLabelDesign', { params: { id } });
  return (
    <Loaded key={id} read={read} title={words.title}>
      {(design) => <DesignOf design={design} />}
    </Loaded>
  );
}

function DesignOf({ design }: { readonly design: LabelDesign }) {
  const { productId, productName } = design;
  const editing = useEditing({ version: design.version ?? 0, details: design.details }, ({ details }) =>
    draftOfDesign(details),
  );
  const sheets = useRead('listLabelSheets').data ?? [];
  const save = useWrite('saveLabelDesign');
  const letGo = useUnsaved(editing.isChanged, save);
  const goTo = useGoTo();
  const [market, setMarket] = useState<Market>(design.markets[0] ?? 'GB');
  const [runId, setRunId] = useState('');
  const { read: preview, problems } = usePreview(productId, editing.draft, market, runId);
  async function submit() {
    const read = readDesignDraft(editing.draft);
    if (!read.ok) return save.refuse(read.problems);
    const version = editing.version === 0 ? null : editing.version;
    if (!(await save.write({ params: { id: productId }, body: { version, details: read.value } }))) return;
    letGo();
    tell(words.saved(productName));
    goTo('/labels');
  }
  // What was drawn of other measures says nothing of these.
  const label = problems.length === 0 && !preview.error ? preview.data : undefined;
  return (
    <Page
      title={words.titleOf(productName)}
      above={labelWords.title}
      says={saysOf(productName, label, { isUnread: problems.length > 0, isRefused: preview.error !== null })}
      soft={`${words.soft} ${labelWords.notAdvice}`}
    >
      <div className={styles.desk}>
        <Card title={words.pieces}>
          <Conflict
            problems={save.problems}
            editing={editing}
            describe={describeDesign(sheets)}
            onChosen={save.forget}
          />
          <Form label={words.form} problems={save.problems} onSubmit={() => void submit()}>
            <DesignFields productId={productId} editing={editing} sheets={sheets} eMark={design.eMark} />
            <FormActions>
              <Button type="submit" isAct isBusy={save.isBusy}>
                {words.save}
              </Button>
            </FormActions>
          </Form>
        </Card>
        <div className={styles.beside}>
          <Card title={words.preview}>
            <SideBySide>
              <Select
                label={labelWords.market}
                where="market"
                value={market}
                onChange={(chosen) => setMarket(chosen as Market)}
                choices={design.markets.map((id) => ({ id, name: checkWords.market[id] }))}
              />
              <Select
                label={words.previewBy}
                where="runId"
                value={runId}
                onChange={setRunId}
                choices={
                  design.lastRun ? [{ id: design.lastRun.id, name: words.ofRun(design.lastRun.number) }] : []
                }
                none={words.example}
              />
            </SideBySide>
            <Problems
              problems={[
                ...problems,
                ...(preview.error && problems.length === 0 ? problemsOf(preview.error) : []),
              ]}
            />
            {label && (
              <Preview
                label={label}
                productId={productId}
                move={(element) => editing.set('moves')(withMoved(editing.draft.moves, element))}
              />
            )}
          </Card>
        </div>
      </div>
      {label && <Elements label={label} />}
    </Page>
  );
}

/** Laid out anew once typing pauses; what was last drawn stays until the next is there. */
function usePreview(productId: string, draft: DesignDraft, market: Market, runId: string) {
  const details = readDesignDraft(useSettled(draft));
  const read = useRead(
    'previewLabel',
    {
      params: { id: productId },
      ...(details.ok && { body: { market, details: details.value, runId: runId === '' ? null : runId } }),
    },
    { isWanted: details.ok, keepsLast: true },
  );
  return { read, problems: details.ok ? [] : details.problems };
}

const saysOf = (
  name: string,
  label: Label | undefined,
  { isUnread, isRefused }: { readonly isUnread: boolean; readonly isRefused: boolean },
): string => {
  if (isUnread) return words.unread(name);
  if (isRefused) return words.refused(name);
  if (!label) return words.reading(name);
  const stops = countStops(label);
  return stops === 0 && label.missing.length > 0
    ? words.lacks(name, checkWords.market[label.market], label.missing.length)
    : words.says(name, stops);
};

const countStops = ({ notes, pieces }: Label): number =>
  [...notes, ...pieces.flatMap((piece) => piece.notes)].filter(({ isStop }) => isStop).length;

type Movable = NonNullable<LabelNote['movesToLeaflet']>;

interface PreviewProps {
  readonly label: Label;
  readonly productId: string;
  readonly move: (element: Movable) => void;
}

function Preview({ label, productId, move }: PreviewProps) {
  const mend = ({ movesToLeaflet, problem: { code } }: LabelNote) => {
    if (code === 'label-language-missing')
      return <TextLink to={`/products/${productId}`}>{words.writeWords}</TextLink>;
    return (
      movesToLeaflet && (
        <Button onPress={() => move(movesToLeaflet)}>{labelWords.moveToLeaflet[movesToLeaflet]}</Button>
      )
    );
  };
  return (
    <>
      <Notes notes={label.notes} mend={mend} />
      <Lacks label={label} productId={productId} />
      <div className={styles.faces}>
        {label.pieces.map((piece) => (
          <PieceFigure key={piece.id} piece={piece} mend={mend} />
        ))}
      </div>
    </>
  );
}

/** What the market asks for and nobody has written down, where the labels themselves are laid out already. */
const Lacks = ({ label, productId }: { readonly label: Label; readonly productId: string }) =>
  countStops(label) === 0 &&
  label.missing.length > 0 && (
    <>
      <ul>
        {label.missing.map((each) => (
          <li key={JSON.stringify(each)}>
            <State kind="stop">
              <Sentence saying={each} />
            </State>
          </li>
        ))}
      </ul>
      <p>
        <TextLink to={`/products/${productId}`}>{words.mendLacks}</TextLink>
      </p>
    </>
  );
