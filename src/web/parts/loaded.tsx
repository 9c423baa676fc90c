import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { shellWords } from '../../words/index.ts';
import { problemsOf } from '../api/problems-of.ts';
import { Page } from '../shell/page.tsx';
import { Button } from './button.tsx';
import { FormActions } from './form-actions.tsx';
import { LinkButton } from './link-button.tsx';
import { Problems } from './problems.tsx';
import { Skeleton } from './skeleton.tsx';

interface Props<Answer> {
  readonly read: UseQueryResult<Answer, Error>;
  /** Of the page, where fetching it fails. */
  readonly title: string;
  readonly children: (answer: Answer) => ReactNode;
}

/** Shows what was fetched; grey shapes while it comes; what is wrong, and a way on, where it does not. */
export function Loaded<Answer>({ read, title, children }: Props<Answer>) {
  if (read.data !== undefined) return children(read.data);
  if (read.error === null) return <Skeleton />;
  const problems = problemsOf(read.error);
  // Nothing was entered here, so nothing can be lost: what the bench needs lies on the tablet, the rest does not.
  const isAway = problems.some(({ code }) => code === 'workshop-not-reached');
  return (
    <Page title={title} says={isAway ? shellWords.notKept : shellWords.trouble} above={title} isNarrow>
      {isAway ? <p>{shellWords.notKeptWhy}</p> : <Problems problems={problems} />}
      <FormActions>
        <Button isAct onPress={() => void read.refetch()}>
          {shellWords.again}
        </Button>
        {isAway && <LinkButton to="/making">{shellWords.toBench}</LinkButton>}
      </FormActions>
    </Page>
  );
}
