import { expect, it } from 'vitest';
import { buildOrder } from '../../../test/workshop/build-order.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { say } from '../../words/index.ts';

const at = openFillingBench();
const { makeBowl, startRun, fillAll, closeRun, brewWith } = at;

async function look(runId: string, orderId: string) {
  const { sentence, makeNext } = await at.bench.get('getMorning');
  const line = makeNext.find(({ key }) => key === `run ${runId}`);
  const { promise } = await at.bench.get('getOrder', { params: { id: orderId } });
  return {
    morning: say(sentence),
    state: line?.state,
    words: line && [line.stateWord, ...line.detail].map((each) => say(each)).join(' '),
    act: line?.action && say(line.action.words),
    promise: say(promise.sentence),
  };
}

it('tins that only wait for a signature are promised, and the morning asks for it', async () => {
  const batch = await makeBowl();
  const run = await startRun(batch.id);
  await fillAll(run.id, ...FIVE);
  await closeRun(run.id);
  const order = await buildOrder(at.bench, run.productId, 1);
  const { morning, words, act, promise } = await look(run.id, order);
  expect(morning).toContain('waiting for somebody to release it');
  expect(words).toBe('waits for release 5 tins filled. Order 101, wanted by tomorrow, waits for 1 of them.');
  expect(act).toBe('Look and release');
  expect(promise).toContain('once 1 filled tin is released');
});

it('tins that a check holds are promised to no order, and the morning says what holds them', async () => {
  const run = await brewWith('7');
  const order = await buildOrder(at.bench, run.productId, 1);
  const { morning, state, words, act, promise } = await look(run.id, order);
  expect(morning).not.toContain('release it');
  expect(state).toBe('stop');
  expect(words).toBe(
    'held 1 tin filled. May not be released: more was weighed in than the limits or the report allow.',
  );
  expect(act).toBe('See what holds it');
  expect(promise).not.toContain('released');
});

it('tins whose label alone is not right are promised all the same: a label can be printed anew', async () => {
  const batch = await makeBowl();
  const run = await startRun(batch.id);
  await fillAll(run.id, ...FIVE);
  await closeRun(run.id);
  const { version, details } = await at.bench.get('getWorkshop');
  if (!details) throw new Error('the workshop has begun');
  const body = { version, details: { ...details, responsibleGb: { name: '', address: '' } } };
  await at.bench.get('changeWorkshop', { body });
  const order = await buildOrder(at.bench, run.productId, 1);
  const { words, promise } = await look(run.id, order);
  expect(words).toContain('May not be released: their label is not right.');
  expect(promise).toContain('once 1 filled tin is released');
});
