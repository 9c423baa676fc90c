import type { Problem } from '../../core/problem.ts';
import { ApiProblem } from '../api/api-problem.ts';
import { call } from '../api/call.ts';
import { connection } from '../api/connection.ts';
import { PATIENCE_MS } from './patience.ts';

/** Asks the workshop whether it is there, where nothing tells yet that it is not. */
export async function isReached(): Promise<boolean> {
  if (connection.read() === 'silent') return false;
  try {
    await call('getHealth', {}, AbortSignal.timeout(PATIENCE_MS));
  } catch (error) {
    if (!(error instanceof ApiProblem)) throw error;
    return error.isAnswered;
  }
  return connection.read() !== 'silent';
}

/**
 * What of the questions found here has to be asked here, before the entry is kept: none where the workshop answers, which
 * asks by how things stand there. It may have gone silent this moment, so it is looked.
 */
export const askedHere = async (found: readonly Problem[]): Promise<readonly Problem[]> =>
  found.length === 0 || (await isReached()) ? [] : found;
