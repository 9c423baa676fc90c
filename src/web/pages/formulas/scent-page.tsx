import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { formulaWords, scentWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import styles from './check.module.css';
import type { Formula } from './formula.ts';
import { sayScent } from './say-scent.ts';
import { ScentAnswerView } from './scent-answer.tsx';
import { firstScent } from './scent-draft.ts';
import { ScentForm } from './scent-form.tsx';
import { useScent } from './use-scent.ts';

/** How much scent may it have? Answered at every key. */
export function ScentPage() {
  const { id } = useParams({ from: '/formulas/$id/scent' });
  const materials = useRead('listMaterials');
  return (
    <Loaded read={useRead('getFormula', { params: { id } })} title={formulaWords.title}>
      {(formula) => (
        <Loaded read={materials} title={scentWords.title(formula.name)}>
          {(all) =>
            formula.latest ? <ScentOf formula={formula} revision={formula.latest} materials={all} /> : null
          }
        </Loaded>
      )}
    </Loaded>
  );
}

interface Props {
  readonly formula: Formula;
  readonly revision: NonNullable<Formula['latest']>;
  readonly materials: AnswerOf<'listMaterials'>;
}

function ScentOf({ formula, revision, materials }: Props) {
  const [draft, setDraft] = useState(() =>
    firstScent(
      revision.lines,
      (line) => materials.find((one) => one.id === line.itemId)?.details.role === 'fragrance',
    ),
  );
  const scent = useScent(formula, revision, draft);
  const title = scentWords.title(formula.name);
  return (
    <Page
      title={title}
      above={title}
      says={<span aria-live="polite">{sayScent(scent, draft)}</span>}
      soft={scentWords.soft}
      actions={<LinkButton to={`/formulas/${formula.id}`}>{formula.name}</LinkButton>}
    >
      <div className={styles.columns}>
        <div className={styles.column}>
          {scent?.ok && <ScentAnswerView formulaId={formula.id} lines={revision.lines} scent={scent.value} />}
        </div>
        <div className={styles.column}>
          <div className={styles.first}>
            <ScentForm
              lines={revision.lines}
              draft={draft}
              problems={scent && !scent.ok ? scent.problems : []}
              onChange={setDraft}
            />
          </div>
        </div>
      </div>
    </Page>
  );
}
