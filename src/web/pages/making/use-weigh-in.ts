import { useState } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { exact, readDecimal, toText } from '../../../core/quantity/index.ts';
import { weighInWords as words } from '../../../words/index.ts';
import { kept } from '../../api/kept.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useRead } from '../../api/use-read.ts';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Addition, Batch } from './batch.ts';
import type { DeviationSaid } from './deviation-dialog.tsx';
import { judgeAdditionHere } from './judge-here.ts';
import { lotNumberIn, lotToUse } from './lot-to-use.ts';
import { lastWeighing, meantBy, questionOf } from './reading-question.ts';
import { scaleToUse } from './scale-to-use.ts';
import { useLotsOf } from './use-lots-of.ts';
import { bandLeft } from './weigh-band.ts';
import { bandVerdict, whyNotWeighed } from './weight-verdict.ts';

/** What is about to be entered: an answer to a question is about this, whatever the field says by then. */
export interface Said {
  readonly net: string;
  readonly lotId: string;
  readonly isPart: boolean;
  /** The lot ran out: the one that the rest comes from. */
  readonly restLotId?: string;
  readonly vessel: { readonly grossGrams: string; readonly tareGrams: string } | null;
  readonly isReadingSure: boolean;
  /** Another scale than is chosen: said in the answer to a question. */
  readonly scaleId?: string;
  /** Weighed on a scale that failed its check, and said so. */
  readonly isScaleHeldKnown?: boolean;
  /** Something else instead of what the line asks for, in a trial: said, with why. */
  readonly instead?: DeviationSaid;
  readonly readingWas: { readonly kind: string; readonly wasGrams: string | null } | null;
}

export interface Asked {
  readonly said: Said;
  readonly problem: Problem;
}

export interface AskedReading {
  readonly said: Said;
  readonly question: Problem;
  readonly kind: string;
  readonly meant: string | null;
}

/** What the workshop asks back, once nothing else stands in the way: answered with what was done differently and why. */
const IS_ASKED: ReadonlySet<string> = new Set([
  'scale-held',
  'weight-outside-band',
  'lot-not-planned',
  'weighed-late',
  'weighed-over-limits',
]);

const NONE: readonly Problem[] = [];
const tareKey = (scaleId: string | null): string => `bench.tare.${scaleId ?? 'any'}`;

/** One weighing from what is typed to what is entered, with the questions on the way. */
export function useWeighIn(batch: Batch, screen: Addition, onDone: () => void) {
  const { draft, set, forget } = useKeptDraft(`bench.${batch.id}.addition.${screen.position}`, {
    grams: '',
    tare: '',
    isVessel: '',
    /** '': as planned. */
    lotId: '',
    scaleId: '',
  });
  const [reading, setReading] = useState<AskedReading | null>(null);
  /** The problems of a refusal are in the state only once this is drawn again: it is asked then what they are about. */
  const [about, setAsking] = useState<Said | null>(null);
  const save = useBenchWrite('recordAddition', { judge: judgeAdditionHere(screen) });
  const scales = useRead('getWorkshop').data?.scales ?? [];
  const planned = scales.find((each) => each.id === screen.scaleId) ?? null;
  const band = bandLeft(screen);
  const chosen = scales.find((each) => each.id === draft.scaleId);
  const scale = chosen ?? scaleToUse(planned, scales, band.targetGrams);
  const scaleId = chosen === undefined && planned === null ? screen.scaleId : (scale?.id ?? null);
  const lotId = draft.lotId === '' ? (lotToUse(screen) ?? '') : draft.lotId;
  const numberTold = lotNumberIn(screen, lotId);
  const lots = useLotsOf(screen.itemId, screen.itemName, numberTold === undefined);
  const lotNumber = numberTold ?? lots?.find(({ id }) => id === lotId)?.number ?? null;
  const isVessel = draft.isVessel !== '';
  const lastTare = kept.read(tareKey(scaleId));
  const net = isVessel ? netOf(draft.grams, draft.tare) : draft.grams;
  const isVesselHeavier = isVessel && draft.grams !== '' && isNoMore(net);

  const saidNow = (more: Partial<Said> = {}): Said => ({
    net: typedDecimal(net),
    lotId,
    isPart: false,
    vessel: isVessel ? { grossGrams: typedDecimal(draft.grams), tareGrams: typedDecimal(draft.tare) } : null,
    isReadingSure: false,
    readingWas: null,
    ...more,
  });

  async function send(
    said: Said,
    more: {
      readonly deviation?: DeviationSaid;
      readonly isOverKnown?: boolean;
      readonly stays?: boolean;
    } = {},
  ): Promise<boolean> {
    setReading(null);
    setAsking(null);
    const deviation = more.deviation ?? said.instead ?? restDeviation(screen, said);
    const entered = await save.write({
      params: { id: batch.id },
      body: {
        position: screen.position,
        lotId: said.lotId,
        scaleId: said.scaleId ?? scaleId,
        actualGrams: said.net,
        isPart: said.isPart,
        restLotId: said.restLotId ?? null,
        vessel: said.vessel,
        isSubstitute: said.instead !== undefined,
        isReadingSure: said.isReadingSure,
        isScaleHeldKnown: said.isScaleHeldKnown ?? false,
        readingWas: said.readingWas,
        isOverKnown: more.isOverKnown ?? false,
        ...(deviation && { deviation }),
      },
    });
    if (!entered) {
      setAsking(said);
      return false;
    }
    if (said.vessel) kept.write(tareKey(scaleId), said.vessel.tareGrams);
    forget();
    if (!said.isPart && more.stays !== true) onDone();
    return true;
  }
  const told = about && save.problems.find(({ code }) => IS_ASKED.has(code));
  const doubted = about && save.problems.find(({ code }) => code === 'reading-doubtful');

  function enter(more: Partial<Said> = {}): void {
    // What no scale shows is said beside the digits already.
    if (draft.grams === '' || whyNotWeighed(net)) return;
    const said = saidNow(more);
    const question = questionOf({
      net: said.net,
      gross: said.vessel?.grossGrams ?? null,
      band,
      isPart: said.isPart,
      lastTare: isVessel ? null : lastTare,
      last: lastWeighing(batch.screens, screen.position),
      scale,
    });
    if (question && !said.isReadingSure)
      setReading({ said, question, kind: question.code, meant: meantBy(question) });
    else void send(said);
  }
  return {
    draft,
    set,
    net,
    band,
    isVessel,
    lotId,
    lotNumber,
    isVesselHeavier,
    lastTare,
    scales,
    verdict: bandVerdict(net, band),
    saidNow,
    enter,
    send,
    save,
    scale,
    scaleId,
    planned,
    asked: told && about ? { said: about, problem: told } : null,
    reading:
      reading ??
      (doubted && about
        ? {
            said: about,
            question: doubted,
            kind: String(doubted.parameters?.kind ?? ''),
            meant: meantBy({ ...doubted, code: 'reading-ten-times' }),
          }
        : null),
    problems: told || doubted ? NONE : save.problems,
    forgetAsked: () => {
      setReading(null);
      setAsking(null);
      save.forget();
    },
  };
}

export type WeighIn = ReturnType<typeof useWeighIn>;

/** Gross less tare; what cannot be read goes on as typed and is named. */
function netOf(gross: string, tare: string): string {
  const [whole, empty] = [readDecimal(gross, 'gross'), readDecimal(tare === '' ? '0' : tare, 'tare')];
  if (!whole.ok || !empty.ok) return gross;
  return toText(whole.value.minus(empty.value));
}

/** The vessel alone weighs as much as it does with what is in it, or more. */
function isNoMore(net: string): boolean {
  const read = readDecimal(net, 'net');
  return read.ok && read.value.lte(0);
}

/** The rest of what ran out comes of another lot: that was said with the part before it, where it lies in the band. */
function restDeviation(screen: Addition, { lotId, net }: Said): DeviationSaid | undefined {
  const ranOut = screen.entries.findLast((entry) => entry.isPart && entry.lotId === screen.lotId);
  if (!ranOut || lotId === screen.lotId) return undefined;
  const isInside = bandVerdict(net, bandLeft(screen)) === 'inside';
  return isInside && exact(net).gt(0)
    ? { what: words.autoEmpty(ranOut.actualGrams), why: words.autoEmptyWhy(ranOut.lotNumber) }
    : undefined;
}
