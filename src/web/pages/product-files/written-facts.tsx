import type { productFiles } from '../../../contract/index.ts';
import { Figure } from '../../parts/figure.tsx';
import { Figures } from '../../parts/figures.tsx';
import { useSayWords } from './use-say-words.ts';

export function WrittenFacts({ facts }: { readonly facts: productFiles.WrittenPaper['facts'] }) {
  const say = useSayWords();
  return (
    <Figures>
      {facts.map(({ label, text }) => (
        <Figure key={say(label)} label={say(label)} value={say(text)} />
      ))}
    </Figures>
  );
}
