import type { formulas } from '../../contract/index.ts';
import { type BatchHead, findBatchRevisionDetails, type Reader } from '../../storage/index.ts';

type SettingHours = Pick<formulas.RevisionDetails, 'settingHours'>;

/** How long a base sets, by its revision; null of a batch that is no base. */
export async function findBase(db: Reader, head: BatchHead): Promise<SettingHours | null> {
  if (head.formula_kind !== 'base') return null;
  const { settingHours } = JSON.parse(await findBatchRevisionDetails(db, head.id)) as SettingHours;
  return { settingHours };
}
