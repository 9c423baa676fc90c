import { dirname, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { must } from '../../core/problem.ts';
import { useCases } from '../index.ts';
import type { WorkshopDetails } from './get-workshop.ts';

let bench: TestWorkshop;
afterEach(() => bench.close());

describe('the first start', () => {
  const begin = { with: 'own', name: 'Test Bench', firstPerson: 'Ada Quill' } as const;

  it('finds an empty file and makes a workshop with a person, a shelf and a place for retained samples', async () => {
    bench = await openTestWorkshop({ isEmpty: true });
    expect(await bench.get('getWorkshop')).toMatchObject({
      state: 'empty',
      details: null,
      version: 0,
      people: [],
      places: [],
    });
    const begun = await bench.get('beginWorkshop', { body: begin });
    expect(begun).toMatchObject({
      state: 'ready',
      isExample: false,
      today: '2026-11-26',
      version: 1,
      people: [{ name: 'Ada Quill', isActive: true }],
      lastBackup: null,
    });
    expect(begun.places.map((place) => place.kind)).toEqual(['retained', 'shelf']);
    expect(begun.scales).toEqual([]);
    // Of the file that is open, whatever it was started with.
    expect(begun.folder).toBe(dirname(resolve(bench.context.storage.file)));
  });

  it('is one entry of the chain, signed by nobody', async () => {
    bench = await openTestWorkshop({ isEmpty: true });
    const begun = await bench.get('beginWorkshop', { body: begin });
    const entries = await bench.context.storage.db.selectFrom('entry').selectAll().execute();
    expect(entries).toHaveLength(1);
    expect(entries[0]).toMatchObject({ kind: 'workshop-begun', person_id: null, seq: 1 });
    expect(JSON.parse(entries[0]?.payload ?? '')).toMatchObject({ personId: begun.people[0]?.id });
    expect(entries[0]?.payload).not.toContain('Ada Quill');
  });

  it('happens once: a second is refused and leaves everything as it was', async () => {
    bench = await openTestWorkshop();
    const before = await bench.get('getWorkshop');
    const again = await bench.ask('beginWorkshop', { body: { ...begin, name: 'Another' } });
    expect(codesOf(again)).toEqual(['workshop-already-begun']);
    expect(codesOf(await bench.ask('beginWorkshop', { body: { with: 'example' } }))).toEqual([
      'example-not-here',
    ]);
    expect(await bench.get('getWorkshop')).toEqual(before);
  });

  it('opens the example where it came along', async () => {
    const seen: string[] = [];
    bench = await openTestWorkshop({
      isEmpty: true,
      buildExample: async (context) => {
        seen.push(context.machine.now());
      },
    });
    await bench.get('beginWorkshop', { body: { with: 'example' } });
    expect(seen).toEqual(['2026-11-26T08:05:00Z']);
  });

  it('leaves the file empty where the example was not finished, and fills it whole the next time', async () => {
    let isCutOff = true;
    bench = await openTestWorkshop({
      isEmpty: true,
      buildExample: async (context) => {
        await useCases.beginWorkshop(context, { params: {}, query: undefined, body: begin });
        if (isCutOff) throw new Error('cut off');
      },
    });
    const open = () => bench.ask('beginWorkshop', { body: { with: 'example' } });
    await expect(open()).rejects.toThrow('cut off');
    expect(await bench.get('getWorkshop')).toMatchObject({ state: 'empty', people: [], places: [] });
    isCutOff = false;
    expect(must(await open())).toMatchObject({ state: 'ready', people: [{ name: 'Ada Quill' }] });
    const { findings } = await bench.get('checkUp');
    expect(findings.filter((finding) => !finding.isSound)).toEqual([]);
    expect(codesOf(await open())).toEqual(['workshop-already-begun']);
  });

  it('fills nothing in where somebody began meanwhile', async () => {
    bench = await openTestWorkshop({
      isEmpty: true,
      buildExample: async () => {
        await bench.get('beginWorkshop', { body: { ...begin, name: 'Own Bench' } });
      },
    });
    const late = await bench.ask('beginWorkshop', { body: { with: 'example' } });
    expect(codesOf(late)).toEqual(['workshop-already-begun']);
    expect((await bench.get('getWorkshop')).details?.name).toBe('Own Bench');
  });

  it('refuses an empty name and nobody', async () => {
    bench = await openTestWorkshop({ isEmpty: true });
    const refusal = await bench.ask('beginWorkshop', { body: { with: 'own', name: ' ', firstPerson: '' } });
    expect(codesOf(refusal)).toEqual(['value-too-small', 'value-too-small']);
  });
});

describe('changing the workshop', () => {
  beforeEach(async () => {
    bench = await openTestWorkshop();
  });
  const read = () => bench.get('getWorkshop');
  const details = async (more: Partial<WorkshopDetails> = {}) => ({
    ...((await read()).details as WorkshopDetails),
    ...more,
  });

  it('keeps names and addresses, and counts the version', async () => {
    const address = { name: 'Test Bench', address: '1 Bench Lane, Testham' };
    const changed = await bench.get('changeWorkshop', {
      body: { version: 1, details: await details({ responsibleGb: address }) },
    });
    expect(changed).toMatchObject({ version: 2, details: { responsibleGb: address } });
  });

  it('tells the day in its own time zone', async () => {
    bench.setClock('2026-11-26T23:30:00Z');
    await bench.get('changeWorkshop', {
      body: { version: 1, details: await details({ timeZone: 'Europe/Berlin' }) },
    });
    expect((await read()).today).toBe('2026-11-27');
  });

  it('refuses a time zone that no calendar knows', async () => {
    const body = { version: 1, details: await details({ timeZone: 'Europe/Nowhere' }) };
    expect(codesOf(await bench.ask('changeWorkshop', { body }))).toEqual(['time-zone-unknown']);
  });

  it('refuses the second of two tabs and says what the workshop holds', async () => {
    const body = { version: 1, details: await details({ name: 'First tab' }) };
    await bench.get('changeWorkshop', { body });
    const late = await bench.ask('changeWorkshop', {
      body: { version: 1, details: await details({ name: 'Second tab' }) },
    });
    expect(late).toMatchObject({
      ok: false,
      problems: [{ code: 'changed-meanwhile', found: 1, allowed: 2, parameters: { holds: 'First tab' } }],
    });
    expect((await read()).details?.name).toBe('First tab');
  });

  it('takes the same entry sent twice once', async () => {
    const body = { stamp: bench.stamp(), version: 1, details: await details({ name: 'Once' }) };
    const first = await bench.get('changeWorkshop', { body });
    expect(await bench.get('changeWorkshop', { body })).toEqual(first);
    expect(first.version).toBe(2);
  });

  it('asks for somebody who works here', async () => {
    const body = { stamp: bench.stamp({ by: 'nobody' }), version: 1, details: await details() };
    expect(codesOf(await bench.ask('changeWorkshop', { body }))).toEqual(['person-unknown']);
  });
});

describe('people', () => {
  beforeEach(async () => {
    bench = await openTestWorkshop();
  });

  it('are added and renamed, and who left signs nothing any more', async () => {
    const { id } = await bench.get('savePerson', { body: { name: 'Cleo Finch' } });
    await bench.get('savePerson', { body: { id, version: 1, name: 'Cleo Finch-Marsh', isActive: false } });
    const people = (await bench.get('getWorkshop')).people;
    expect(people.find((person) => person.id === id)).toMatchObject({
      name: 'Cleo Finch-Marsh',
      isActive: false,
      version: 2,
    });
    const stamp = bench.stamp({ by: id });
    expect(codesOf(await bench.ask('savePlace', { body: { stamp, name: 'Stall', kind: 'stall' } }))).toEqual([
      'person-unknown',
    ]);
  });

  it('never bear the name of another who works here', async () => {
    expect(codesOf(await bench.ask('savePerson', { body: { name: 'ada quill' } }))).toEqual([
      'person-name-taken',
    ]);
  });

  it('never all leave', async () => {
    const { first, second } = bench.people;
    await bench.get('savePerson', { body: { id: second, version: 1, name: 'Bo Marsh', isActive: false } });
    const last = await bench.ask('savePerson', {
      body: { id: first, version: 1, name: 'Ada Quill', isActive: false },
    });
    expect(codesOf(last)).toEqual(['last-person']);
  });

  it('are not changed from an old page, nor where they are not', async () => {
    const { second } = bench.people;
    await bench.get('savePerson', { body: { id: second, version: 1, name: 'Bo Marsh-Reed' } });
    expect(
      codesOf(await bench.ask('savePerson', { body: { id: second, version: 1, name: 'Bo Reed' } })),
    ).toEqual(['changed-meanwhile']);
    expect(
      codesOf(await bench.ask('savePerson', { body: { id: 'no-one', version: 1, name: 'No One' } })),
    ).toEqual(['thing-not-found']);
  });
});

describe('scales', () => {
  beforeEach(async () => {
    bench = await openTestWorkshop();
  });
  const scale = {
    name: 'Bench scale',
    capacityGrams: '5000',
    readabilityGrams: '0.1',
    repeatabilityGrams: null,
    accuracyClass: null,
    verificationIntervalGrams: null,
  };

  it('are added and changed', async () => {
    const { id } = await bench.get('saveScale', { body: { scale } });
    await bench.get('saveScale', {
      body: { scale: { ...scale, id, version: 1, accuracyClass: 'II', verificationIntervalGrams: '1' } },
    });
    expect((await bench.get('getWorkshop')).scales).toEqual([
      {
        ...scale,
        id,
        version: 2,
        accuracyClass: 'II',
        verificationIntervalGrams: '1',
        checkWeightGrams: null,
        checkToleranceGrams: null,
        repeatability: null,
        check: null,
      },
    ]);
  });

  it('may have an interval as fine as what they show, and no finer', async () => {
    const fine = { ...scale, verificationIntervalGrams: '0.1' };
    await bench.get('saveScale', { body: { scale: fine } });
    const finer = { ...scale, name: 'Finer', verificationIntervalGrams: '0.09' };
    expect(codesOf(await bench.ask('saveScale', { body: { scale: finer } }))).toEqual([
      'interval-below-readability',
    ]);
  });

  it('are refused with a step above what they carry, a comma, or a name that is taken', async () => {
    await bench.get('saveScale', { body: { scale } });
    const swapped = { ...scale, name: 'Swapped', capacityGrams: '0.1', readabilityGrams: '5000' };
    expect(codesOf(await bench.ask('saveScale', { body: { scale: swapped } }))).toEqual([
      'readability-above-capacity',
    ]);
    const comma = { ...scale, name: 'Comma', readabilityGrams: '0,1' };
    expect(codesOf(await bench.ask('saveScale', { body: { scale: comma } }))).toEqual(['comma-for-point']);
    expect(codesOf(await bench.ask('saveScale', { body: { scale } }))).toEqual(['scale-name-taken']);
  });

  it('are not changed from an old page, nor where they are not', async () => {
    const { id } = await bench.get('saveScale', { body: { scale } });
    await bench.get('saveScale', { body: { scale: { ...scale, id, version: 1 } } });
    expect(codesOf(await bench.ask('saveScale', { body: { scale: { ...scale, id, version: 1 } } }))).toEqual([
      'changed-meanwhile',
    ]);
    const lost = { ...scale, name: 'Lost', id: 'lost', version: 1 };
    expect(codesOf(await bench.ask('saveScale', { body: { scale: lost } }))).toEqual(['thing-not-found']);
  });
});

describe('places', () => {
  beforeEach(async () => {
    bench = await openTestWorkshop();
  });

  it('are added, each name once', async () => {
    await bench.get('savePlace', { body: { name: 'Harbour market', kind: 'stall' } });
    expect(codesOf(await bench.ask('savePlace', { body: { name: 'harbour market', kind: 'shop' } }))).toEqual(
      ['place-name-taken'],
    );
    expect((await bench.get('getWorkshop')).places.map((place) => place.name)).toEqual([
      'Retained samples',
      'Shelf',
      'Harbour market',
    ]);
  });
});
