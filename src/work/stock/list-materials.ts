import { done, refused } from '../../core/problem.ts';
import { findMaterial, listMaterials as readMaterials } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewMaterials } from './material-view.ts';

export const listMaterials: UseCase<'listMaterials'> = async ({ storage: { db } }) =>
  done(await viewMaterials(db, await readMaterials(db)));

export const getMaterial: UseCase<'getMaterial'> = async ({ storage: { db } }, { params: { id = '' } }) => {
  const row = await findMaterial(db, id);
  const [view] = row ? await viewMaterials(db, [row]) : [];
  return view ? done(view) : refused(thingNotFound('id', id));
};
