import { useState } from 'react';
import { workshopWords } from '../../../words/index.ts';
import { problemsOf } from '../../api/problems-of.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Problems } from '../../parts/problems.tsx';
import { State } from '../../parts/state.tsx';

const { checkUp: words } = workshopWords;

/** Asked only when wanted: it reads the whole file. */
export function CheckUpCard() {
  const [isWanted, setWanted] = useState(false);
  const check = useRead('checkUp', {}, { isWanted });
  const run = () => (isWanted ? void check.refetch() : setWanted(true));
  return (
    <Card title={words.title}>
      <p className="soft">{words.about}</p>
      <div role="status">
        {check.data && (
          <>
            <State kind={check.data.isSound ? 'ready' : 'stop'}>
              {check.data.isSound ? words.sound : words.unsound}
            </State>
            <ul>
              {check.data.findings.map(({ what, isSound, detail }) => (
                <li key={what}>
                  {what}: <State kind={isSound ? 'ready' : 'stop'}>{isSound ? words.ok : words.bad}</State>
                  {!isSound && <span className="small"> {detail}</span>}
                </li>
              ))}
            </ul>
          </>
        )}
      </div>
      <Problems problems={problemsOf(check.error)} />
      <div>
        <Button onPress={run} isBusy={check.isFetching}>
          {words.run}
        </Button>
      </div>
    </Card>
  );
}
