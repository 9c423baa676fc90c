import type { Stamp } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { momentOfEntry } from '../away/clock.ts';
import { ownEntries } from '../away/own-entries.ts';
import { ApiProblem } from './api-problem.ts';
import { deviceName } from './device-name.ts';
import { makeId } from './make-id.ts';
import { askPerson } from './person-now.ts';

/** Who enters what when, on which machine. One stamp is one entry, however often it is sent. */
export function makeStamp(by: string): Stamp {
  const id = makeId();
  ownEntries.add(id);
  return { id, at: momentOfEntry(), by, device: deviceName.read() };
}

/** Of whoever works here, who is asked where nobody said so. */
export async function stampNow(): Promise<Stamp> {
  const by = await askPerson();
  if (by === null) throw new ApiProblem([problem('nobody-said-who', 'stamp.by')], true);
  return makeStamp(by);
}
