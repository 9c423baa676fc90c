import { netContentsTables } from '../../../catalogue/index.ts';
import { findTareSpread, judgeRun } from '../../../core/filling/index.ts';
import { type Exact, exact, toText } from '../../../core/quantity/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import type { KeptEntry } from '../../away/kept-entry.ts';
import { judgeTin, measureTin, nextNumber } from './judge-here.ts';
import { isTin, type Run, type Weight } from './run.ts';

type NameOf = (personId: string) => string;
type Change = (run: Run, entry: KeptEntry, nameOf: NameOf) => Run;

const addWeight: Change = (run, entry, nameOf) => {
  const { grossGrams, tareGrams = null, refillOf = null, sure = [] } = entry.body as BodyOf<'recordFill'>;
  const refill = run.weights.find(({ entryId }) => entryId === refillOf) ?? null;
  const given = tareGrams === null ? null : exact(tareGrams);
  const measured = measureTin(given ? { ...run, tareGrams: null } : run, {
    gross: grossGrams,
    tare: tareGrams ?? '',
    refill: given ? null : refill,
  });
  const judged = measured && judgeTin(run, measured);
  if (!measured || !judged) return run;
  const weight: Weight = {
    entryId: entry.id,
    number: refill?.number ?? nextNumber(run),
    way: given ? (given.isZero() ? 'net' : 'own') : measured.way,
    grossGrams,
    tareGrams: toText(measured.tareGrams),
    netGrams: toText(measured.netGrams),
    verdict: judged.verdict,
    lightBy: judged.verdict === 'too-light' ? lightBy(run, measured.netGrams) : null,
    surelyGrams: toText(judged.surelyGrams),
    errorGrams: toText(measured.errorGrams),
    gramsToAdd: toText(judged.gramsToAdd),
    isStruck: false,
    fate: null,
    refillOf,
    isRefilled: false,
    sure: [...sure],
    at: entry.at,
    by: nameOf(entry.body.stamp.by),
  };
  const before = run.weights.map((each) =>
    each.entryId === refillOf ? { ...each, isRefilled: true } : each,
  );
  return recount(run, [...before, weight]);
};

function lightBy({ limit1Grams, limit2Grams }: Run, net: Exact): 'label' | 'limit-1' | 'limit-2' {
  if (limit2Grams !== null && net.lt(limit2Grams)) return 'limit-2';
  return limit1Grams !== null && net.lt(limit1Grams) ? 'limit-1' : 'label';
}

const strikeWeight: Change = (run, entry) => {
  const { entryId, fate = null } = entry.body as BodyOf<'strikeFill'>;
  const struck = run.weights.find((each) => each.entryId === entryId);
  const weights = run.weights.map((each) => {
    if (each.entryId === entryId) return { ...each, isStruck: true, fate };
    // A slip in the later weight leaves the earlier one as it was.
    return fate === 'slip' && each.entryId === struck?.refillOf ? { ...each, isRefilled: false } : each;
  });
  return recount(run, weights);
};

const makeReady: Change = (run, entry, nameOf) => {
  const { word } = entry.body as BodyOf<'prepareRun'>;
  const signed = { at: entry.at, by: nameOf(entry.body.stamp.by) };
  const { ready } = run;
  switch (word.kind) {
    case 'area':
      return { ...run, ready: { ...ready, area: { ...word, reason: word.reason ?? '', ...signed } } };
    case 'containers':
      return { ...run, ready: { ...ready, containers: { ...word, remark: word.remark ?? '', ...signed } } };
    default:
      return { ...run, ready: { ...ready, issued: { ...word, ...signed } } };
  }
};

const changeWay: Change = (run, entry) => {
  const { way, tareGrams = null, tares = [], aimGrams = null } = entry.body as BodyOf<'changeFillWay'>;
  const found = way === 'mean' && tares.length > 1 ? findTareSpread(tares) : null;
  const spread = found?.ok ? found.value : null;
  const mean = spread ? toText(spread.meanGrams.toDecimalPlaces(6)) : (tareGrams ?? run.tinGrams);
  const allowance = spread?.allowanceGrams ?? exact(0);
  return {
    ...run,
    way,
    tareGrams: way === 'mean' ? mean : way === 'net' ? '0' : null,
    tares: way === 'mean' ? [...tares] : [],
    tareSpreadGrams: spread ? toText(spread.standardDeviationGrams.toDecimalPlaces(6)) : null,
    errorGrams: toText(exact(run.scale.worstErrorGrams).plus(way === 'mean' ? allowance : 0)),
    aimGrams: aimGrams ?? run.aimGrams,
  };
};

const CHANGES: Readonly<Record<string, Change>> = {
  recordFill: addWeight,
  strikeFill: strikeWeight,
  prepareRun: makeReady,
  changeFillWay: changeWay,
};

const sumNet = (weights: readonly Weight[]): Exact =>
  weights.reduce((sum, { netGrams }) => sum.plus(netGrams), exact(0));

/** Out of the bowl by now: in tins, and in what was put aside and not put back. */
const takenGrams = (weights: readonly Weight[]): Exact =>
  sumNet(weights.filter((each) => isTin(each) || each.fate === 'trial' || each.fate === 'binned'));

/** The figures of the run, counted anew by the same core as at the workshop. */
function recount(run: Run, weights: readonly Weight[]): Run {
  const tins = weights.filter(isTin);
  const counting = tins.filter((each) =>
    run.fillBasis === 'average' && run.limit2Grams !== null
      ? exact(each.netGrams).gte(run.limit2Grams)
      : each.verdict !== 'too-light',
  );
  const verdict = judgeTins(run, tins);
  const counted = judgeTins(run, counting);
  if (!verdict || !counted) return run;
  const left = exact(run.bowlLeftGrams).plus(takenGrams(run.weights)).minus(takenGrams(weights));
  return {
    ...run,
    weights: [...weights],
    bowlLeftGrams: toText(left.gt(0) ? left : exact(0)),
    summary: {
      ...run.summary,
      filled: verdict.filled,
      tooLight: verdict.tooLight,
      stillToFill: verdict.stillToFill,
      putAside: weights.filter(({ fate }) => fate === 'trial' || fate === 'binned').length,
      bowlHolds: Math.max(0, left.div(run.aimGrams).floor().toNumber()),
      counting: counting.length,
      meanGrams: shown(counted.meanGrams),
      standardDeviationGrams: shown(counted.standardDeviationGrams),
      giveawayGrams: shown(counted.giveawayGrams),
      verdict: verdict.verdict,
      decidedBy: verdict.decidedBy,
      belowNominal: verdict.belowNominal,
      belowLimit1: verdict.belowLimit1,
      belowLimit2: verdict.belowLimit2,
    },
  };
}

const shown = (value: Exact | null): string | null =>
  value === null ? null : toText(value.toDecimalPlaces(3));

function judgeTins(run: Run, tins: readonly Weight[]) {
  const judged = judgeRun(
    {
      declaredGrams: run.declaredGrams,
      basis: run.fillBasis,
      wanted: run.wanted,
      netGrams: tins.map(({ netGrams }) => netGrams),
      errorsGrams: tins.map(({ errorGrams }) => errorGrams),
      scaleErrorGrams: run.errorGrams,
    },
    netContentsTables,
  );
  return judged.ok ? judged.value : null;
}

const knownEntries = ({ weights }: Run): ReadonlySet<string> =>
  new Set(weights.map(({ entryId }) => entryId));

/** The run as whoever stands before this tablet knows it: as the workshop told it, with what lies here, in order. */
export function projectKeptRun(run: Run, kept: readonly KeptEntry[], nameOf: NameOf): Run {
  const known = knownEntries(run);
  const own = kept.filter(({ id, params }) => params.id === run.id && !known.has(id));
  return own.reduce((now, entry) => CHANGES[entry.route]?.(now, entry, nameOf) ?? now, run);
}
