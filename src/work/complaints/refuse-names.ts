import { type Problem, problem } from '../../core/problem.ts';
import { listCustomers, type Reader } from '../../storage/index.ts';

/** Shorter than this, a name is likely to be a part of another word (common practice, no source). */
const SHORTEST = 4;

/** What is written here stays for ever; a customer's name has to be erasable, so it does not belong here. */
export async function findCustomerNamed(db: Reader, said: string): Promise<Problem[]> {
  const text = said.toLocaleLowerCase('en-GB');
  const customers = await listCustomers(db);
  const named = customers.find(
    ({ name }) => name.length >= SHORTEST && text.includes(name.toLocaleLowerCase('en-GB')),
  );
  return named ? [problem('complaint-names-customer', 'details.said', { found: named.name })] : [];
}
