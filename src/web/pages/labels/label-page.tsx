import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { checkWords, labelWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Select } from '../../parts/select.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import type { Run } from '../filling/run.ts';
import { CountsCard } from './counts-card.tsx';
import { Elements } from './elements.tsx';
import styles from './label.module.css';
import type { Label } from './label.ts';
import { PieceFigure } from './piece-figure.tsx';
import { PrintLabel } from './print-label.tsx';

type Market = Label['market'];

export function LabelPage() {
  const { id } = useParams({ from: '/labels/$id' });
  return (
    <Loaded read={useRead('getRun', { params: { id } })} title={labelWords.title}>
      {(run) => <LabelOf run={run} />}
    </Loaded>
  );
}

function LabelOf({ run }: { readonly run: Run }) {
  const [market, setMarket] = useState<Market>(run.markets[0] ?? 'GB');
  const read = useRead('getRunLabel', { params: { id: run.id }, query: { market } }, { keepsLast: true });
  return (
    <Loaded read={read} title={labelWords.titleOf(run.number)}>
      {(label) => (
        <Page
          title={labelWords.titleOf(run.number)}
          says={saysOf(label)}
          above={`${run.number} ${run.productName}`}
          soft={`${labelWords.soft} ${labelWords.notAdvice}`}
          actions={
            <LinkButton to={`/labels/products/${run.productId}`}>{labelWords.changeDesign}</LinkButton>
          }
        >
          <SideBySide>
            <Select
              label={labelWords.market}
              where="market"
              value={market}
              onChange={(chosen) => setMarket(chosen as Market)}
              choices={run.markets.map((id) => ({ id, name: checkWords.market[id] }))}
            />
          </SideBySide>
          <Missing label={label} />
          {label.pieces.length > 0 && (
            <Card title={labelWords.atTrueSize}>
              <div className={styles.faces}>
                {label.pieces.map((piece) => (
                  <PieceFigure key={piece.id} piece={piece} />
                ))}
              </div>
            </Card>
          )}
          {label.missing.length === 0 && (
            <Card title={labelWords.print}>
              <PrintLabel key={market} run={run} label={label} />
            </Card>
          )}
          <p className="soft">{labelWords.checkAgain}</p>
          <CountsCard run={run} />
          <Elements label={label} />
        </Page>
      )}
    </Loaded>
  );
}

const saysOf = (label: Label): string =>
  label.missing.length === 0
    ? labelWords.complete(checkWords.market[label.market])
    : labelWords.missing(checkWords.market[label.market], label.missing.length);

const Missing = ({ label }: { readonly label: Label }) =>
  label.missing.length === 0 ? null : (
    <ul>
      {label.missing.map((saying) => (
        <li key={JSON.stringify(saying)}>
          <State kind="stop">
            <Sentence saying={saying} />
          </State>
        </li>
      ))}
    </ul>
  );
