import type { z } from 'zod';
import type { answers } from '../contract/index.ts';
import { answerOrigins, readNamedOrigins } from '../core/safety/index.ts';
import { originsInNames } from '../reference/index.ts';
import type { OpenedRevision } from './checked.ts';

/** "Has it got nuts in?", of everything that an opened formula or batch holds. */
export const answerOpenedOrigins = ({ materials }: OpenedRevision): z.output<typeof answers.originAnswer>[] =>
  answerOrigins(
    [...materials.values()].map(({ name, origins, inciEu, inciUs, botanical }) => ({
      name,
      origins,
      namedOrigins: readNamedOrigins([inciEu, inciUs, botanical], originsInNames).map(({ flag }) => flag),
    })),
  ).map((row) => ({ ...row, materials: [...row.materials], byName: [...row.byName] }));
