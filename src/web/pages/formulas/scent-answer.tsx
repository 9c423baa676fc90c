import { Link, useNavigate } from '@tanstack/react-router';
import type { FoundScent } from '../../../check/index.ts';
import { type Exact, exact, roundToStep, sumOf, toText } from '../../../core/quantity/index.ts';
import { checkWords, sayDecimal, sayGrams, scentWords } from '../../../words/index.ts';
import { Bar } from '../../parts/bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import { BlendBar } from './blend-bar.tsx';
import styles from './check.module.css';
import type { Formula } from './formula.ts';
import { keepProposal } from './proposal.ts';
import { QuestionSum } from './question-sum.tsx';
import { nameOfBound, sayCloseness, sayPercents, sayRelief, whoseLimit } from './say-scent.ts';
import { gramsWith } from './scent-draft.ts';
import type { ScentView } from './use-scent.ts';

interface Props {
  readonly formulaId: string;
  readonly lines: NonNullable<Formula['latest']>['lines'];
  readonly scent: ScentView;
}

export function ScentAnswerView({ formulaId, lines, scent }: Props) {
  const { found, check } = scent;
  return (
    <>
      {found.verdict === 'found' && <Blend formulaId={formulaId} lines={lines} scent={scent} />}
      {found.notInReport.length > 0 && (
        <State kind="watch">{scentWords.notInReport(found.notInReport.join(', '))}</State>
      )}
      <Limits found={found} />
      {check && check.open.length > 0 && (
        <Card title={scentWords.questions}>
          <ul className={styles.reasons}>
            <QuestionSum questions={check.open} hrefOf={() => `/formulas/${formulaId}/check#questions`} />
          </ul>
          <p className="soft small">{scentWords.questionsSoft}</p>
        </Card>
      )}
    </>
  );
}

/** What is found, as it would be made. */
function Blend({ formulaId, lines, scent }: Props) {
  const { oils, found, scale, batchGrams } = scent;
  const percents = oils.map((_, index) => found.percents[index] ?? exact(0));
  const said = sayPercents(percents);
  const grams = gramsWith(
    lines,
    oils,
    percents.map((percent) => toText(percent)),
    scale?.readabilityGrams,
  );
  const rows = oils.map(({ line }, index) => ({
    key: `${line}`,
    name: lines[line]?.itemName ?? '',
    share: found.shares[index] ?? 0,
    percent: percents[index] ?? exact(0),
    said: said[index] ?? '',
    grams: grams[line] ?? '',
  }));
  const whole = sayGrams(toText(sumOf(lines.map((line) => line.grams))));
  const isOfReport = found.decidedBy?.told.kind === 'assessor' && found.decidedBy.name !== OWN_MAXIMUM;
  return (
    <Card title={scentWords.blend}>
      <BlendBar parts={rows} />
      <Table
        caption={scentWords.blend}
        isCaptionHidden
        rows={rows}
        keyOf={(row) => row.key}
        columns={[
          { head: scentWords.oil, cell: (row) => row.name },
          {
            head: scentWords.ofScent,
            cell: (row) => `${sayDecimal((row.share * 100).toFixed(1))} %`,
            isNumber: true,
          },
          { head: scentWords.ofProduct, cell: (row) => `${row.said} %`, isNumber: true },
          { head: scentWords.inRecipe(whole), cell: (row) => sayGrams(row.grams), isNumber: true },
          ...(batchGrams === undefined
            ? []
            : [
                {
                  head: scentWords.inBatch,
                  cell: (row: (typeof rows)[number]) => (
                    <InBatch percent={row.percent} batchGrams={batchGrams} leastGrams={scent.leastGrams} />
                  ),
                },
              ]),
        ]}
      />
      <p>{sayRelief(found)}</p>
      {isOfReport && (
        <p>
          {scentWords.reportDecides} <Link to="/reports">{checkWords.toReports}</Link>
        </p>
      )}
      <UseIt formulaId={formulaId} lines={lines} grams={grams} />
    </Card>
  );
}

/** The name of a maximum that somebody typed, as the calculation gives it back. */
const OWN_MAXIMUM = 'mostPercent';

interface BatchProps {
  readonly percent: Exact;
  readonly batchGrams: string;
  readonly leastGrams: string | null;
}

/** Grams in the batch that was typed; what the scale does not weigh well enough is said. */
function InBatch({ percent, batchGrams, leastGrams }: BatchProps) {
  const grams = roundToStep(exact(batchGrams).times(percent).div(100), '0.001', 'down');
  return (
    <>
      {sayGrams(toText(grams))}
      {leastGrams !== null && grams.lt(leastGrams) && (
        <>
          <br />
          <State kind="watch">{scentWords.tooSmall(sayGrams(leastGrams))}</State>
        </>
      )}
    </>
  );
}

/** As many as are taken in at a glance; what is below a tenth of its limit does not come close. */
const SHOWN = 8;
const CLOSE = 0.1;

function Limits({ found: { verdict, percent, limits } }: { readonly found: FoundScent }) {
  if (verdict !== 'found' || percent === undefined) return null;
  return (
    <Card title={scentWords.limits}>
      <ul className={styles.closest}>
        {limits
          .filter(({ shareOfLimit }) => shareOfLimit >= CLOSE)
          .slice(0, SHOWN)
          .map((limit) => {
            const share = toText(exact(limit.shareOfLimit * 100));
            return (
              <li key={`${limit.name} ${limit.told.kind} ${limit.told.ruleId} ${limit.most}`}>
                <strong>{nameOfBound(limit)}</strong>
                {limit.leastPercent === undefined && <Bar typical={share} most={share} />}
                <span className="small">
                  {sayCloseness(limit, percent)} · {whoseLimit(limit)}
                </span>
              </li>
            );
          })}
      </ul>
    </Card>
  );
}

interface UseItProps {
  readonly formulaId: string;
  readonly lines: Props['lines'];
  readonly grams: readonly string[];
}

/** Takes the amounts into the recipe's form; nothing is kept until it is saved there. */
function UseIt({ formulaId, lines, grams }: UseItProps) {
  const navigate = useNavigate();
  async function take() {
    keepProposal(
      formulaId,
      lines.map(({ stage, itemKind, itemId }, index) => ({
        stage,
        itemKind,
        itemId,
        grams: grams[index] ?? '',
      })),
    );
    await navigate({ to: '/formulas/$id/recipe', params: { id: formulaId } });
  }
  return (
    <p>
      <Button isAct onPress={() => void take()}>
        {scentWords.use}
      </Button>
    </p>
  );
}
