import type { UseCases } from '../use-case.ts';
import { answerClaim } from './answer-claim.ts';
import { keepClaim } from './keep-claim.ts';
import { listClaims } from './list-claims.ts';

export const awayUseCases = { keepClaim, listClaims, answerClaim } satisfies UseCases<
  'keepClaim' | 'listClaims' | 'answerClaim'
>;
