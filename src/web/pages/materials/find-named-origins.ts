import { type NamedOrigin, readNamedOrigins } from '../../../core/safety/index.ts';
import { originsInNames } from '../../../reference/index.ts';
import type { MaterialDetails } from './material.ts';

/** What the names of a material tell of although nobody ticked it; nothing while nobody has said anything. */
export const findNamedOrigins = ({
  origins,
  inciEu,
  inciUs,
  botanical,
}: Pick<MaterialDetails, 'origins' | 'inciEu' | 'inciUs' | 'botanical'>): NamedOrigin[] =>
  origins === null
    ? []
    : readNamedOrigins([inciEu, inciUs, botanical], originsInNames).filter(
        ({ flag }) => !origins.includes(flag),
      );
