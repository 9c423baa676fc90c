import { type Saying, saying } from '../contract/index.ts';
import { say } from '../words/index.ts';

const OPEN: Readonly<Record<string, string>> = {
  'unknown-shared-cas': 'open-identity',
  'unknown-ambiguous-name': 'open-identity',
  'unknown-name-contradicts-fields': 'open-identity',
  'unknown-may-be-prohibited': 'open-may-be-prohibited',
  'unknown-amount': 'open-amount',
  'unknown-label-amount': 'open-amount',
  'unknown-value': 'open-value',
  'unknown-use': 'open-use',
  'unknown-counted-as-other': 'open-counted-as-other',
  'unknown-needs-certificate': 'open-needs-certificate',
  'unknown-law-not-in-tables': 'open-law-not-in-tables',
  'unknown-positive-list': 'open-positive-list',
  'unknown-conditions': 'open-conditions',
  'unknown-label-name': 'open-label-name',
  'unknown-composition': 'open-composition',
  'unknown-rest': 'open-rest',
  'unknown-rest-unsaid': 'open-rest',
  'unknown-constituent': 'open-constituent',
};

/** What is not known, by why it is not: the one sentence asks, the other stands within another. */
export function sayWhatIsOpen({ code, parameters }: Saying): string {
  const open = OPEN[code];
  if (open === undefined) throw new Error(`no words for what ${code} leaves open`);
  return say(saying(open, parameters));
}
