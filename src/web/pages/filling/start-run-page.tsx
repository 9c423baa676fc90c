import { useNavigate, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { fillingWords, lightWords, makingWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Select } from '../../parts/select.tsx';
import { Page } from '../../shell/page.tsx';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import { LabelLacks } from '../labels/label-lacks.tsx';
import { AsWeighed } from '../making/as-weighed.tsx';
import type { Batch } from '../making/batch.ts';
import { findKnownTare } from './find-known-tare.ts';
import { scalesToChoose } from './scales-to-choose.ts';
import { StartAim } from './start-aim.tsx';
import { tolerableErrorOf } from './tolerable-error-of.ts';
import { TARE_QUESTIONS, type WayDraft, WayFields } from './way-fields.tsx';
import { wayOf } from './way-of.ts';

export function StartRunPage() {
  const { id } = useParams({ from: '/making/$id/fill' });
  const products = useRead('listProducts');
  const workshop = useRead('getWorkshop');
  const materials = useRead('listMaterials');
  return (
    <Loaded read={useRead('getBatch', { params: { id } })} title={makingWords.fill}>
      {(batch) => (
        <Loaded read={products} title={makingWords.fill}>
          {(all) => (
            <Loaded read={workshop} title={makingWords.fill}>
              {(bench) => (
                <Loaded read={materials} title={makingWords.fill}>
                  {(bought) => (
                    <StartRun
                      batch={batch}
                      products={all.filter((one) => one.details.formulaId === batch.formulaId)}
                      scales={bench.scales}
                      materials={bought}
                    />
                  )}
                </Loaded>
              )}
            </Loaded>
          )}
        </Loaded>
      )}
    </Loaded>
  );
}

interface Props {
  readonly batch: Batch;
  readonly products: AnswerOf<'listProducts'>;
  readonly scales: AnswerOf<'getWorkshop'>['scales'];
  readonly materials: AnswerOf<'listMaterials'>;
}

function StartRun({ batch, products, scales, materials }: Props) {
  const planned =
    batch.tins.find((tin) => batch.runs.every((run) => run.productName !== tin.productName)) ?? batch.tins[0];
  const { draft, set, isChanged } = useDraft({
    productId: planned?.productId ?? products[0]?.id ?? '',
    wanted: planned ? String(planned.units) : '',
    scaleId: scalesToChoose(scales)[0]?.id ?? '',
    aim: '',
  });
  const [way, setWay] = useState<WayDraft>({ way: 'mean', tare: '', tares: [] });
  const chosen = products.find((one) => one.id === draft.productId);
  const knownTare = findKnownTare(chosen?.details.tinId, materials);
  const start = useWrite('startRun');
  const letGo = useUnsaved(isChanged, start);
  const navigate = useNavigate();
  const isAsked = start.problems.some(({ code }) => TARE_QUESTIONS.includes(code));
  async function submit() {
    const body = {
      batchId: batch.id,
      productId: draft.productId,
      wanted: Number(draft.wanted),
      scaleId: draft.scaleId,
      ...wayOf(way),
      aimGrams: typedDecimalOrNull(draft.aim),
      sure: isAsked ? [...TARE_QUESTIONS] : [],
    };
    const run = await start.write({ body });
    if (!run) return;
    letGo();
    await navigate({ to: '/filling/$id', params: { id: run.id } });
  }
  return (
    <Page
      title={fillingWords.startTitle(batch.number)}
      says={fillingWords.startSays}
      above={`${batch.number} ${batch.formulaName}`}
      isNarrow
    >
      <AsWeighed batch={batch} />
      {chosen && <LabelLacks asked={{ details: chosen.details, productId: chosen.id, batchId: batch.id }} />}
      {products.length === 0 && <p>{fillingWords.noProduct}</p>}
      <Form
        label={fillingWords.startTitle(batch.number)}
        problems={start.problems}
        onSubmit={() => void submit()}
      >
        <Select
          label={fillingWords.product}
          where="productId"
          value={draft.productId}
          onChange={set('productId')}
          choices={products.map((one) => ({ id: one.id, name: one.details.name }))}
          isBench
        />
        <Field
          label={fillingWords.wanted}
          where="wanted"
          kind="whole"
          least={1}
          value={draft.wanted}
          onChange={set('wanted')}
          isBench
        />
        <Select
          label={fillingWords.scale}
          where="scaleId"
          value={draft.scaleId}
          onChange={set('scaleId')}
          choices={scalesToChoose(scales)}
          isBench
        />
        <WayFields
          draft={way}
          onChange={(next) => {
            start.forget();
            setWay(next);
          }}
          knownTare={knownTare}
          tolerableErrorGrams={chosen ? tolerableErrorOf(chosen.details.declaredGrams) : null}
        />
        {chosen && (
          <StartAim
            batchId={batch.id}
            productId={chosen.id}
            scaleId={draft.scaleId}
            wanted={draft.wanted}
            way={way}
            aim={draft.aim}
            onChange={set('aim')}
          />
        )}
        <Button type="submit" isAct isBench isBusy={start.isBusy}>
          {isAsked ? lightWords.sure : fillingWords.start}
        </Button>
      </Form>
    </Page>
  );
}
