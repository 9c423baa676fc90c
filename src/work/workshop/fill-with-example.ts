import { done, problem, type Result, refused } from '../../core/problem.ts';
import { fillFrom, openStorage } from '../../storage/index.ts';
import type { Context } from '../context.ts';

export const alreadyBegun = () => problem('workshop-already-begun', 'with');

/**
 * Fills an empty file with the example workshop. Its weeks of work are written in memory and go into the file in one
 * transaction: a program that is killed meanwhile leaves the file as empty as it was.
 */
export async function fillWithExample(context: Context): Promise<Result<null>> {
  if (!context.buildExample) return refused(problem('example-not-here', 'with', { found: 'example' }));
  const inMemory = await openStorage(':memory:');
  if (!inMemory.ok) return inMemory;
  try {
    await context.buildExample({ ...context, storage: inMemory.value });
    const filled = await fillFrom(inMemory.value, context.storage);
    if (!filled.ok) return filled;
    return filled.value ? done(null) : refused(alreadyBegun());
  } finally {
    await inMemory.value.close();
  }
}
