import { useNavigate } from '@tanstack/react-router';
import type { FoundScent } from '../../../check/index.ts';
import { exact, readDecimal, toText } from '../../../core/quantity/index.ts';
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
import { sayPercent, whoseLimit } from './say-scent.ts';
import { gramsWith, oilsOf, type ScentDraft } from './scent-draft.ts';

interface Props {
  readonly formulaId: string;
  readonly lines: NonNullable<Formula['latest']>['lines'];
  readonly draft: ScentDraft;
  readonly found: FoundScent;
  readonly leastGrams: string | null;
}

export function ScentAnswerView({ formulaId, lines, draft, found, leastGrams }: Props) {
  const oils = oilsOf(draft);
  const rows = oils.map(({ line }, index) => ({
    key: `${line}`,
    name: lines[line]?.itemName ?? '',
    share: found.shares[index] ?? 0,
    percent: found.percents[index] ?? exact(0),
  }));
  return (
    <>
      {found.verdict === 'found' && (
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
              { head: scentWords.ofProduct, cell: (row) => `${sayPercent(row.percent)} %`, isNumber: true },
              {
                head: scentWords.inBatch,
                cell: (row) => <InBatch percent={row.percent} draft={draft} leastGrams={leastGrams} />,
              },
            ]}
          />
          <p>
            {found.relief
              ? scentWords.relief(
                  sayPercent(found.relief.percent),
                  found.relief.decidedBy.name === 'mostPercent'
                    ? scentWords.ownMaximum.toLowerCase()
                    : found.relief.decidedBy.name,
                  whoseLimit(found.relief.decidedBy),
                )
              : scentWords.reliefNone}
          </p>
          <UseIt formulaId={formulaId} lines={lines} oils={oils} percents={found.percents.map(toTextOf)} />
        </Card>
      )}
      {found.notInReport.length > 0 && (
        <State kind="watch">{scentWords.notInReport(found.notInReport.join(', '))}</State>
      )}
      <Limits found={found} />
      {found.unknown.length > 0 && (
        <Card title={scentWords.unknown}>
          <p>{[...new Set(found.unknown.map(({ name }) => name))].join(', ')}</p>
        </Card>
      )}
    </>
  );
}

const toTextOf = (percent: FoundScent['percents'][number]): string => toText(percent);

interface BatchProps {
  readonly percent: FoundScent['percents'][number];
  readonly draft: ScentDraft;
  readonly leastGrams: string | null;
}

/** Grams in the batch that was typed; what the scale does not weigh well enough is said. */
function InBatch({ percent, draft, leastGrams }: BatchProps) {
  const read = readDecimal(draft.batchGrams, 'batchGrams');
  if (!read.ok) return null;
  const grams = read.value.times(percent).div(100).toDecimalPlaces(3, 1);
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

const Limits = ({ found }: { readonly found: FoundScent }) =>
  found.verdict !== 'found' ? null : (
    <Card title={scentWords.limits}>
      <ul className={styles.closest}>
        {found.limits
          .filter(({ shareOfLimit }) => shareOfLimit >= CLOSE)
          .slice(0, SHOWN)
          .map((limit) => {
            const share = toText(exact(limit.shareOfLimit * 100).toDecimalPlaces(1, 0));
            return (
              <li key={`${limit.name} ${limit.told.kind} ${limit.told.ruleId} ${limit.most}`}>
                <strong>{limit.name === 'mostPercent' ? scentWords.ownMaximum : limit.name}</strong>
                <Bar typical={share} most={share} />
                <span className="small">
                  {checkWords.shareOfLimit(sayDecimal(share))} · {whoseLimit(limit)}
                </span>
              </li>
            );
          })}
      </ul>
    </Card>
  );

interface UseItProps {
  readonly formulaId: string;
  readonly lines: Props['lines'];
  readonly oils: ReturnType<typeof oilsOf>;
  readonly percents: readonly string[];
}

/** Takes the amounts into the recipe's form; nothing is kept until it is saved there. */
function UseIt({ formulaId, lines, oils, percents }: UseItProps) {
  const navigate = useNavigate();
  async function take() {
    const grams = gramsWith(lines, oils, percents);
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
