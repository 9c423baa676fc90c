import { done, type Result, refused } from '../../core/problem.ts';
import {
  canonicalJson,
  giveUp,
  insertPerson,
  insertPlace,
  insertWorkshop,
  readWorkshop,
  type Writer,
  writeOnce,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import type { UseCase } from '../use-case.ts';
import { alreadyBegun, fillWithExample } from './fill-with-example.ts';
import { viewWorkshop, type WorkshopDetails, type WorkshopView } from './get-workshop.ts';

export const beginWorkshop: UseCase<'beginWorkshop'> = async (context, { body }) => {
  if (body.with === 'own') return openDoors(context, { ...body, isExample: false });
  if (context.buildExample && (await readWorkshop(context.storage.db))) return refused(alreadyBegun());
  const filled = await fillWithExample(context);
  return filled.ok ? done(await viewWorkshop(context)) : filled;
};

export interface Beginning {
  readonly name: string;
  readonly firstPerson: string;
  readonly isExample: boolean;
}

/**
 * The first entry of the chain: the workshop, one person, a shelf, and a place for retained samples. There is nobody
 * yet who could sign it. No scale is invented: a wrong readability would make every weighing sheet wrong.
 */
export async function openDoors(context: Context, beginning: Beginning): Promise<Result<WorkshopView>> {
  const { newId, now } = context.machine;
  const at = now();
  const asked = { text: canonicalJson(beginning), salt: null };
  const stamp = { id: newId(), at, by: null, device: 'this computer', asked };
  const written = await writeOnce(context.storage, stamp, at, async (tx, tell) => {
    if (await readWorkshop(tx)) giveUp(alreadyBegun());
    const first = firstThings(beginning, newId);
    await tell({
      kind: 'workshop-begun',
      subjectKind: 'workshop',
      subjectId: 'workshop',
      payload: storyOf(first),
    });
    await writeFirstThings(tx, first);
  });
  return written.ok ? done(await viewWorkshop(context)) : written;
}

const firstThings = ({ name, firstPerson, isExample }: Beginning, newId: () => string) => ({
  isExample,
  details: firstDetails(name),
  person: { id: newId(), name: firstPerson },
  places: [
    { id: newId(), name: 'Shelf', kind: 'shelf' },
    { id: newId(), name: 'Retained samples', kind: 'retained' },
  ],
});

/** People stand in the chain by their number only. */
const storyOf = ({ person, ...first }: ReturnType<typeof firstThings>) => ({ ...first, personId: person.id });

/** What a workshop in Great Britain would choose; each of it can be changed. */
const firstDetails = (name: string): WorkshopDetails => ({
  name,
  responsibleGb: { name: '', address: '' },
  responsibleEu: { name: '', address: '' },
  responsibleUs: { name: '', address: '', contact: '' },
  codeDomain: '',
  currency: 'GBP',
  country: 'GB',
  timeZone: 'Europe/London',
  backupFolder: '',
  bowlGrams: '',
  bowlMl: '',
});

async function writeFirstThings(tx: Writer, first: ReturnType<typeof firstThings>): Promise<void> {
  await insertWorkshop(tx, {
    id: 1,
    details: JSON.stringify(first.details),
    is_example: first.isExample ? 1 : 0,
    version: 1,
  });
  await insertPerson(tx, { ...first.person, is_active: 1, version: 1 });
  for (const place of first.places) await insertPlace(tx, place);
}
