import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench } from '../../../test/workshop/build-making.ts';
import { nameWorkshop } from '../../../test/workshop/build-order.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;

beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
  await nameWorkshop(bench);
});
afterEach(() => bench.close());

const papers = async () => (await bench.get('getMorning')).papers;

describe('papers to see to', () => {
  it('are none in an ordinary week', async () => {
    expect(await papers()).toEqual([]);
  });

  // The report is to be looked at again by 1 October 2028; sixty days before is 2 August.
  it('are a report from sixty days before its review on, and past it from the day after', async () => {
    const on = async (day: string) => {
      bench.setClock(`${day}T12:00:00Z`);
      return (await papers()).map(({ state }) => state);
    };
    expect(await on('2028-08-01')).toEqual([]);
    expect(await on('2028-08-02')).toEqual(['watch']);
    expect(await on('2028-10-01')).toEqual(['watch']);
    expect(await on('2028-10-02')).toEqual(['stop']);
  });

  it('are a serious effect until somebody has looked into it', async () => {
    const { id } = await bench.get('enterComplaint', {
      body: {
        productId: shop.product,
        receivedOn: '2026-11-26',
        details: {
          kind: 'other-health',
          said: 'A night in hospital.',
          effect: 'serious',
          marks: ['hospitalisation'],
        },
      },
    });
    expect(await papers()).toMatchObject([{ state: 'stop', action: { to: `/complaints/${id}` } }]);
    await bench.get('followComplaint', {
      params: { id },
      body: { state: 'looked-into', said: 'The authorities were told.' },
    });
    expect(await papers()).toEqual([]);
  });
});
