import type { Stamp } from '../../contract/index.ts';
import { problem, type Result } from '../../core/problem.ts';
import {
  findClaim,
  findPerson,
  giveUp,
  insertClaimAnswer,
  joinWrite,
  orGiveUp,
  type SignedClaim,
  type Writer,
} from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { AskedContext } from '../context.ts';
import { fillingUseCases } from '../filling/index.ts';
import { makingUseCases } from '../making/index.ts';
import { mayBeEnteredLate } from '../may-be-entered-late.ts';
import { noteRequest } from '../note-requests.ts';
import { record, thingNotFound } from '../record.ts';
import { scaleUseCases } from '../scales/index.ts';
import { stockUseCases } from '../stock/index.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import { viewClaim } from '../view-claim.ts';
import { answerClaimView } from './answer-claim-view.ts';
import { explainRequest, notEnterable, requestOf } from './request-of-claim.ts';

type Body = RequestOf<'answerClaim'>['body'];
type Carry = (context: AskedContext, request: unknown) => Promise<Result<unknown>>;

/** What may be entered after all: whatever the bench enters. */
const BENCH: Readonly<Record<string, Carry>> = {
  ...(makingUseCases as unknown as Record<string, Carry>),
  ...(fillingUseCases as unknown as Record<string, Carry>),
  ...(scaleUseCases as unknown as Record<string, Carry>),
  ...(stockUseCases as unknown as Record<string, Carry>),
};

/**
 * A named person answers. Entered after all, it stands with its own time and name and with the explanation, in the
 * place of what stood there or beside it; set aside, it stays readable with the reason. One transaction: what was
 * struck for it is struck only where it was entered.
 */
export const answerClaim: UseCase<'answerClaim'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const claim = await openClaim(tx, params.id ?? '');
      if (body.how === 'enter') await enterAfterAll(context, tx, claim, body);
      const answer = body.how === 'enter' ? 'entered' : 'aside';
      await tell({
        kind: 'claim-answered',
        subjectKind: 'claim',
        subjectId: claim.entry_id,
        payload: { keptId: claim.kept_id, answer, reason: body.reason, strikes: body.strikes, at: body.at },
      });
      await insertClaimAnswer(tx, {
        entry_id: body.stamp.id,
        claim_entry_id: claim.entry_id,
        answer,
        reason: body.reason,
      });
      return claim.entry_id;
    },
    async (id) => answerClaimView(context.storage.db, await findClaim(context.storage.db, id)),
  );

async function openClaim(tx: Writer, id: string): Promise<SignedClaim> {
  const claim = await findClaim(tx, id);
  if (!claim) giveUp(thingNotFound('id', id));
  if (claim.answer !== null) {
    const by = claim.answered_by ?? '';
    giveUp(problem('claim-answered-already', 'id', { found: claim.answer, parameters: { by } }));
  }
  return claim;
}

async function enterAfterAll(
  context: AskedContext,
  tx: Writer,
  claim: SignedClaim,
  body: Body,
): Promise<void> {
  const view = await viewClaim(tx, claim);
  const what = say(view.what);
  if (body.strikes !== null && body.strikes !== view.mayEnter?.instead?.entryId)
    giveUp(thingNotFound('strikes', body.strikes));
  const told = {
    what,
    why: body.reason,
    at: body.at,
    by: await signerOf(tx, claim, body),
    device: claim.device,
    sure: body.sure,
  };
  const request = orGiveUp(explainRequest(claim.route, requestOf(claim), told));
  if (!BENCH[claim.route] || !mayBeEnteredLate(claim.route)) giveUp(notEnterable(claim.route));
  if (body.strikes !== null) await carryOut(context, tx, strikeName(claim), strikeRequest(claim, body));
  await carryOut(context, tx, claim.route, request);
}

/**
 * In the name of who did it, where that person brought it in and still works here; what somebody else tells of them is
 * entered by who answers.
 */
async function signerOf(tx: Writer, { by_id, told_by }: SignedClaim, { stamp }: Body): Promise<string> {
  if (by_id !== told_by) return stamp.by;
  const person = await findPerson(tx, by_id);
  return person?.is_active === 1 ? by_id : stamp.by;
}

const strikeName = ({ subject_kind }: SignedClaim): string =>
  subject_kind === 'filling-run' ? 'strikeFill' : 'strikeAddition';

/** Its own entry, by whoever answers; its id follows from the answer's, so that the same answer strikes once. */
function strikeRequest({ subject_id }: SignedClaim, { stamp, strikes, reason }: Body) {
  const own: Stamp = { ...stamp, id: `${stamp.id}-strike`.slice(-64) };
  return { params: { id: subject_id }, query: undefined, body: { stamp: own, entryId: strikes, reason } };
}

/** The use-case itself, as part of this write; what it refuses undoes all of it. */
async function carryOut(context: AskedContext, tx: Writer, name: string, request: unknown): Promise<void> {
  const within: AskedContext = {
    ...context,
    storage: joinWrite(context.storage, tx),
    asked: () => noteRequest(context, name, request),
    isAfterAll: true,
  };
  orGiveUp(await (BENCH[name] as Carry)(within, request));
}
