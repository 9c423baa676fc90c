import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { makingWords, handWords as words } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { StateLine } from '../../away/state-line.tsx';
import { Button } from '../../parts/button.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { PageHeading } from '../../shell/page-heading.tsx';
import { AbandonBatch } from './abandon-batch.tsx';
import type { Batch } from './batch.ts';
import styles from './bench.module.css';
import { HandFinish } from './hand-finish.tsx';
import { HandSoFar } from './hand-so-far.tsx';
import { HandStep } from './hand-step.tsx';
import { HandWeigh } from './hand-weigh.tsx';
import { type HandThing, HandWhat } from './hand-what.tsx';

interface Props {
  /** null: nothing is weighed yet. */
  readonly batch: Batch | null;
  /** A formula that is made again by hand. */
  readonly formulaId: string | null;
}

const KINDS = ['mixture', 'base'] as const;

/** A maker who has the recipe in the hands: what goes in next, how much, and on; steps in between as they come. */
export function HandBench({ batch, formulaId }: Props) {
  const [thing, setThing] = useState<HandThing | null>(null);
  const [asked, setAsked] = useState<'step' | 'finish' | null>(null);
  const [kind, setKind] = useState<'mixture' | 'base'>('mixture');
  const navigate = useNavigate();
  const scales = useRead('getWorkshop').data?.scales ?? [];
  return (
    <div className={styles.bench}>
      <div className={styles.top}>
        <p>
          <strong>{batch?.number ?? words.title}</strong> <span className="soft">{batch?.formulaName}</span>
        </p>
        <StateLine />
      </div>
      <PageHeading title={words.title}>
        <span className={styles.name}>{thing ? words.weigh(thing.name) : words.what}</span>
      </PageHeading>
      {thing ? (
        <HandWeigh
          key={thing.lotId ?? thing.name}
          batch={batch}
          formulaId={formulaId}
          thing={thing}
          kind={kind}
          scales={scales}
          onOther={() => setThing(null)}
          onDone={(batchId) => {
            setThing(null);
            if (batch === null) void navigate({ to: '/making/$id', params: { id: batchId } });
          }}
        />
      ) : (
        <>
          {batch === null && <p className="soft">{words.soft}</p>}
          {batch === null && formulaId === null && (
            <RadioChoice
              title={words.goesInto}
              choices={KINDS.map((id) => ({ id, name: words.kind[id] }))}
              value={kind}
              onChange={(id) => setKind(id === 'base' ? 'base' : 'mixture')}
              isBench
            />
          )}
          <HandWhat onChoose={setThing} />
        </>
      )}
      {batch && <HandSoFar batch={batch} />}
      {batch && (
        <div className={styles.under}>
          <Button isBench onPress={() => setAsked('step')}>
            {words.step}
          </Button>
          <Button isBench isAct onPress={() => setAsked('finish')}>
            {words.finish}
          </Button>
          <AbandonBatch batch={batch} />
        </div>
      )}
      {batch === null && (
        <div className={styles.under}>
          <LinkButton isBench to="/making">
            {makingWords.title}
          </LinkButton>
        </div>
      )}
      {batch && asked === 'step' && <HandStep batch={batch} onClose={() => setAsked(null)} />}
      {batch && asked === 'finish' && <HandFinish batch={batch} onClose={() => setAsked(null)} />}
    </div>
  );
}
