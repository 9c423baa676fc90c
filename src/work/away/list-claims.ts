import { done } from '../../core/problem.ts';
import { listOpenClaims } from '../../storage/index.ts';
import type { UseCase } from '../use-case.ts';
import { viewClaim } from '../view-claim.ts';

export const listClaims: UseCase<'listClaims'> = async ({ storage: { db } }) => {
  const rows = await listOpenClaims(db);
  const claims = [];
  for (const row of rows) claims.push(await viewClaim(db, row));
  return done(claims);
};
