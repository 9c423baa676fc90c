import type { TestWorkshop } from './open-test-workshop.ts';

/** How often the file is asked while something is carried out: queries as they are run, whether prepared before or not. */
export async function countQueries(bench: TestWorkshop, carryOut: () => Promise<unknown>): Promise<number> {
  const { storage } = bench.context;
  const { db } = storage;
  let count = 0;
  const counting = db.withPlugin({
    transformQuery({ node }) {
      count += 1;
      return node;
    },
    transformResult: async ({ result }) => result,
  });
  Object.assign(storage, { db: counting });
  try {
    await carryOut();
  } finally {
    Object.assign(storage, { db });
  }
  return count;
}
