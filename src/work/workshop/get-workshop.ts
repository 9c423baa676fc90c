import { dirname, resolve } from 'node:path';
import type { z } from 'zod';
import type { workshop } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { findLastBackup, listPeople, listPlaces, listScales, readWorkshop } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import type { UseCase } from '../use-case.ts';
import { viewScale } from '../view-scale.ts';
import { readWorkshopDetails } from '../workshop-details.ts';

export type WorkshopView = z.output<typeof workshop.workshop>;
export type WorkshopDetails = z.output<typeof workshop.workshopDetails>;

export const getWorkshop: UseCase<'getWorkshop'> = async (context) => done(await viewWorkshop(context));

/** The workshop as every page opens with it; before the first start it is `empty` and has no details. */
export async function viewWorkshop(context: Context): Promise<WorkshopView> {
  const { db, file } = context.storage;
  const row = await readWorkshop(db);
  const people = await listPeople(db);
  const backup = await findLastBackup(db);
  const today = await workshopToday(context);
  return {
    state: row === undefined ? 'empty' : 'ready',
    isExample: row?.is_example === 1,
    folder: dirname(resolve(file)),
    today,
    now: context.machine.now(),
    details: row === undefined ? null : readWorkshopDetails(row.details),
    version: row?.version ?? 0,
    people: people.map(({ id, name, is_active, version }) => ({
      id,
      name,
      isActive: is_active === 1,
      version,
    })),
    scales: (await listScales(db)).map((scale) => viewScale(scale, today)),
    places: (await listPlaces(db)).map((place) => ({
      ...place,
      kind: place.kind as WorkshopView['places'][number]['kind'],
    })),
    lastBackup: backup ? { at: backup.at, file: backup.file } : null,
  };
}
