import type { filling } from '../../contract/index.ts';
import type { SignedReady } from '../../storage/index.ts';
import type { RunView } from './run-shapes.ts';

type Ready = RunView['ready'];

/** Of each kind the last word; they come in the order of entry. */
export function viewReady(words: readonly SignedReady[]): Ready {
  const last = <Kind extends filling.ReadyWord['kind']>(kind: Kind) => {
    const row = words.findLast((word) => word.kind === kind);
    if (!row) return null;
    const word = JSON.parse(row.details) as Extract<filling.ReadyWord, { kind: Kind }>;
    return { ...word, at: row.happened_at, by: row.person_name };
  };
  return { containers: last('containers'), area: last('area'), issued: last('issued') };
}
