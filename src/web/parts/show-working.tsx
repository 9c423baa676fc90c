import { partWords } from '../../words/index.ts';
import { Disclosure } from './disclosure.tsx';
import { Working } from './working.tsx';

interface Props {
  /** A calculation of the catalogue. */
  readonly calculation: string;
  readonly input: Readonly<Record<string, unknown>>;
  /** Where one page shows several. */
  readonly title?: string;
}

/** Every figure can show its working: equation, inputs, answer, sources, and the command that does the same. */
export const ShowWorking = ({ calculation, input, title = partWords.working }: Props) => (
  <Disclosure title={title}>{() => <Working calculation={calculation} input={input} />}</Disclosure>
);
