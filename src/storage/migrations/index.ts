import type { Kysely } from 'kysely';
import * as foundation from './0001-foundation.ts';
import * as safetyAndLabels from './0002-safety-and-labels.ts';
import * as theBench from './0003-the-bench/index.ts';

/** In order; the schema version of a file is the number of migrations it went through. */
export const migrations: readonly {
  readonly name: string;
  readonly up: (db: Kysely<never>) => Promise<void>;
}[] = [
  { name: '0001-foundation', up: foundation.up },
  { name: '0002-safety-and-labels', up: safetyAndLabels.up },
  { name: '0003-the-bench', up: theBench.up },
];

/** Every table that the database itself lets nobody change. */
export const RECORDS: readonly string[] = [
  ...foundation.RECORDS,
  ...safetyAndLabels.RECORDS,
  ...theBench.RECORDS,
];
