import type { productFiles } from '../../../contract/index.ts';
import { productFileWords } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';

const KINDS = { there: 'ready', missing: 'watch', assessor: 'plain' } as const;

/** Complete, or how much it lacks: also where the rest is left to the assessor. */
export const ChapterState = ({ chapter: { state, lacks } }: { readonly chapter: productFiles.Chapter }) => (
  <State kind={lacks > 0 ? 'watch' : KINDS[state]}>
    {lacks > 0 ? productFileWords.lacks(lacks) : productFileWords.states[state]}
  </State>
);
