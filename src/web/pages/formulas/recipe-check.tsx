import { useMemo } from 'react';
import type { RevisionCheck } from '../../../check/index.ts';
import { checkWords, formulaWords, sayDecimal, sayProblem } from '../../../words/index.ts';
import { Bar } from '../../parts/bar.tsx';
import { Card } from '../../parts/card.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import styles from './check.module.css';
import { closestFirst, shareOfLimit } from './limit-share.ts';
import { detailsOf, type RecipeDraft } from './recipe-draft.ts';
import { useLiveCheck } from './use-live-check.ts';

interface Props {
  readonly formulaId: string;
  readonly draft: RecipeDraft;
}

/** What the check says of a recipe while it is typed: the answer, what comes closest to its limit, names on the label. */
export function RecipeCheck({ formulaId, draft }: Props) {
  const judged = useMemo(() => judgedOf(draft), [draft]);
  const live = useLiveCheck(formulaId, judged);
  return (
    <Card title={formulaWords.liveTitle}>
      {live === undefined && <p className="soft">{formulaWords.liveNone}</p>}
      {live && !live.ok && (
        <p role="status">
          <State kind="watch">{live.problems.map((each) => sayProblem(each).says).join(' ')}</State>
        </p>
      )}
      {live?.ok && <Answer check={live.value} />}
    </Card>
  );
}

/** Lines that are not chosen or not weighed yet are left out while somebody types. */
function judgedOf(draft: RecipeDraft) {
  const lines = draft.lines.filter(({ item, grams }) => item !== '' && grams.trim() !== '');
  if (lines.length === 0) return null;
  const details = detailsOf({ ...draft, lines });
  return { ...details, alsoUsedAs: details.alsoUsedAs ?? [] };
}

const STATE = { yes: 'ready', decide: 'watch', no: 'stop' } as const;
/** As many as are taken in at a glance. */
const SHOWN = 4;

const Answer = ({ check }: { readonly check: RevisionCheck }) => (
  <>
    <ul className={styles.reasons}>
      {check.markets.map(({ market, answer, sentence }) => (
        <li key={market}>
          <State kind={STATE[answer]}>
            <Sentence saying={sentence} />
          </State>
        </li>
      ))}
    </ul>
    <ul className={styles.closest}>
      {closestOf(check).map((row) => (
        <li key={`${row.name} ${row.kind} ${row.entry}`}>
          <strong>{row.name}</strong>
          <Bar typical={row.typical} most={row.most} isOver={row.verdict !== 'within'} />
          <span className="small">
            {checkWords.ofLimit(sayDecimal(row.most), sayDecimal(row.limitPercent))} ·{' '}
            {row.kind && checkWords.kinds[row.kind]}
          </span>
        </li>
      ))}
    </ul>
    {check.markets.map(({ market, named }) => (
      <p key={market} className="small">
        <strong>{checkWords.market[market]}:</strong>{' '}
        {checkWords.names(named.map((name) => name.labelName).join(', '))}
      </p>
    ))}
    <p className="soft small">{formulaWords.liveWhole}</p>
  </>
);

/** What comes closest to a limit that has a figure, each once however many markets have it. */
function closestOf({ markets }: RevisionCheck) {
  const rows = closestFirst(markets.flatMap(({ verdicts }) => verdicts)).flatMap((row) =>
    row.limitPercent === null || Number(row.limitPercent) === 0
      ? []
      : [
          {
            ...row,
            limitPercent: row.limitPercent,
            typical: shareOfLimit(row.typicalPercent, row.limitPercent),
            most: shareOfLimit(row.mostPercent, row.limitPercent),
          },
        ],
  );
  const once = new Map(rows.map((row) => [`${row.name} ${row.kind} ${row.entry} ${row.limitPercent}`, row]));
  return [...once.values()].slice(0, SHOWN);
}
