import { partWords } from '../../words/index.ts';
import { problemsOf } from '../api/problems-of.ts';
import { useRead } from '../api/use-read.ts';
import { flattenValues } from '../show/flatten-values.ts';
import styles from './disclosure.module.css';
import { Problems } from './problems.tsx';
import { State } from './state.tsx';

interface Props {
  readonly calculation: string;
  readonly input: Readonly<Record<string, unknown>>;
}

const Values = ({ of }: { readonly of: unknown }) => (
  <dl className={styles.list}>
    {flattenValues(of).map(({ name, value }) => (
      <div key={name} style={{ display: 'contents' }}>
        <dt>{name}</dt>
        <dd>{value}</dd>
      </div>
    ))}
  </dl>
);

export function Working({ calculation, input }: Props) {
  const catalogue = useRead('listCalculations');
  const answer = useRead('calculate', { params: { name: calculation }, body: input });
  const entry = catalogue.data?.find(({ name }) => name === calculation);
  const failed = catalogue.error ?? answer.error;
  if (failed) return <Problems problems={problemsOf(failed)} />;
  if (!entry || answer.data === undefined) return null;
  return (
    <>
      <p>{entry.summary}</p>
      <p className={styles.equation}>{entry.equation}</p>
      <h3>{partWords.workingInputs}</h3>
      <Values of={input} />
      <h3>{partWords.workingAnswer}</h3>
      <Values of={answer.data} />
      <p>
        <span className="soft">{partWords.workingRange}:</span> {entry.validRange}
      </p>
      <h3>{partWords.workingSources}</h3>
      <ul>
        {entry.sources.map(({ text, confidence }) => (
          <li key={text}>
            {text} {confidence === 'memory' && <State kind="watch">{partWords.fromMemory}</State>}
          </li>
        ))}
      </ul>
      <h3>{partWords.workingCommand}</h3>
      <code className={styles.code}>{`gramwright calc ${calculation} '${JSON.stringify(input)}'`}</code>
    </>
  );
}
