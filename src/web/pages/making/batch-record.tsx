import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { makingWords, mishapWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { Moment } from '../../parts/moment.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Page } from '../../shell/page.tsx';
import { showAmount } from '../../show/show-amount.ts';
import { AnsweredClaims } from '../away/answered-claims.tsx';
import { OpenClaims } from '../away/claims-card.tsx';
import { SayFirm } from '../shelf/say-firm.tsx';
import { AsWeighed } from './as-weighed.tsx';
import type { Batch } from './batch.ts';
import { RecordTable } from './record-table.tsx';
import { StageYields } from './stage-yields.tsx';
import { StepRecords } from './step-records.tsx';
import { StruckEntry } from './struck-entries.tsx';
import { WorstCase } from './worst-case.tsx';

/** What was made, with what it needs next: a word that it is firm, or tins. */
export function BatchRecord({ batch }: { readonly batch: Batch }) {
  const [isAsked, setAsked] = useState(false);
  const { outcome, lotId } = batch;
  const isBase = batch.formulaKind === 'base';
  return (
    <Page
      title={`${batch.number} ${batch.formulaName}`}
      says={
        outcome
          ? makingWords.outcome(
              showAmount(outcome.yieldGrams, 'g'),
              showAmount(outcome.inputGrams, 'g'),
              showAmount(outcome.lossGrams, 'g'),
            )
          : makingWords.abandonedSays
      }
      above={`${batch.number} ${batch.formulaName}`}
      soft={
        <>
          {batch.asWeighed && batch.purpose === 'sale'
            ? makingWords.purposeHeld
            : makingWords.purpose[batch.purpose]}
          {batch.lotOnHand !== null && ` · ${makingWords.leftInBowl(showAmount(batch.lotOnHand, 'g'))}`}
        </>
      }
      actions={
        <>
          <PrintLink paper="getBatchSheet" address={{ params: { id: batch.id } }}>
            {makingWords.sheetPdf}
          </PrintLink>
          {batch.isWithoutRecipe && (
            <LinkButton to={`/formulas/${batch.formulaId}`}>{makingWords.seeFormula}</LinkButton>
          )}
          {lotId !== null && <LinkButton to={`/trace/${lotId}`}>{makingWords.seeLot}</LinkButton>}
          {lotId !== null && isBase && (
            <Button isAct onPress={() => setAsked(true)}>
              {makingWords.sayFirm}
            </Button>
          )}
          {lotId !== null && !isBase && batch.lotOnHand !== '0' && (
            <LinkButton isBench isAct={batch.asWeighed === null} to={`/making/${batch.id}/fill`}>
              {makingWords.fill}
            </LinkButton>
          )}
        </>
      }
    >
      {isAsked && lotId !== null && <SayFirm lotId={lotId} onClose={() => setAsked(false)} />}
      <OpenClaims claims={batch.claims} />
      <AsWeighed batch={batch} />
      <WorstCase batch={batch} />
      {!isBase && (
        <Card title={makingWords.runs} isFlush>
          <List rows={batch.runs} keyOf={(run) => run.id} empty={makingWords.noRuns}>
            {(run) => (
              <p>
                <Link to="/filling/$id" params={{ id: run.id }}>
                  {run.number} {run.productName}
                </Link>{' '}
                <span className="soft">{makingWords.runState[run.state]}</span>
              </p>
            )}
          </List>
        </Card>
      )}
      <Card title={makingWords.record} isFlush>
        <RecordTable batch={batch} />
      </Card>
      <StageYields yields={batch.yields} />
      <StepRecords batch={batch} />
      {batch.struck.length > 0 && (
        <Card title={makingWords.struckTitle} isFlush>
          <List rows={batch.struck} keyOf={(entry) => entry.entryId} empty="">
            {(entry) => <StruckEntry entry={entry} />}
          </List>
        </Card>
      )}
      {(batch.spills.length > 0 || batch.resizes.length > 0) && (
        <Card title={mishapWords.happened} isFlush>
          <List rows={listHappened(batch)} keyOf={({ key }) => key} empty="">
            {({ what, why, by, at }) => (
              <>
                <p>
                  <strong>{what}.</strong> {why}
                </p>
                <p className="soft small">
                  {by}, <Moment at={at} />
                </p>
              </>
            )}
          </List>
        </Card>
      )}
      <Card title={makingWords.deviations} isFlush>
        <List
          rows={batch.deviations}
          keyOf={(deviation) => deviation.entryId}
          empty={makingWords.noDeviation}
        >
          {(deviation) => (
            <>
              <p>
                {makingWords.deviationAt(deviation.step, deviation.offGrams)}
                <strong>{deviation.what}.</strong> {deviation.why}
              </p>
              <p className="soft small">
                {deviation.by}, <Moment at={deviation.at} />
              </p>
            </>
          )}
        </List>
      </Card>
      <AnsweredClaims claims={batch.claims} />
    </Page>
  );
}

/** What was spilt, and what made the batch larger or smaller, in the order in which it happened. */
function listHappened({ spills, resizes }: Batch) {
  const all = [
    ...spills.map(({ entryId: key, item, grams, lotNumber, reason: why, by, at }) => ({
      ...{ key, why, by, at },
      what: mishapWords.spilt(item, grams, lotNumber),
    })),
    ...resizes.map(({ entryId: key, wasGrams, isGrams, item, reason, by, at }) => ({
      ...{ key, by, at },
      what: mishapWords.resized(wasGrams, isGrams),
      why: mishapWords.resizedBy(item, reason),
    })),
  ];
  return all.sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
}
