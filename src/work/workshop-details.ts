import type { z } from 'zod';
import type { workshop } from '../contract/index.ts';
import { readWorkshop } from '../storage/index.ts';
import type { Context } from './context.ts';

export type WorkshopDetails = z.output<typeof workshop.workshopDetails>;

/** As they are stored; nobody was asked for a person in the United States before they could be sold to. */
export const readWorkshopDetails = (json: string): WorkshopDetails => ({
  responsibleUs: { name: '', address: '', contact: '' },
  codeDomain: '',
  bowlMl: '',
  ...(JSON.parse(json) as Omit<WorkshopDetails, 'responsibleUs' | 'codeDomain' | 'bowlMl'>),
});

/** What was entered of the workshop. Nothing that asks for it can happen before the first start. */
export async function workshopDetails({ storage }: Context): Promise<WorkshopDetails> {
  const row = await readWorkshop(storage.db);
  if (row === undefined) throw new Error('the workshop has not begun');
  return readWorkshopDetails(row.details);
}
