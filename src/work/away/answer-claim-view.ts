import type { away } from '../../contract/index.ts';
import { done, type Result, refused } from '../../core/problem.ts';
import type { Reader, SignedClaim } from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import { viewClaim } from '../view-claim.ts';

export const answerClaimView = async (
  db: Reader,
  row: SignedClaim | undefined,
): Promise<Result<away.Claim>> => (row ? done(await viewClaim(db, row)) : refused(thingNotFound('id', '')));
