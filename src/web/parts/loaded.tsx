import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { shellWords } from '../../words/index.ts';
import { problemsOf } from '../api/problems-of.ts';
import { Page } from '../shell/page.tsx';
import { Button } from './button.tsx';
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
  return (
    <Page title={title} says={shellWords.trouble} above={title} isNarrow>
      <Problems problems={problemsOf(read.error)} />
      <div>
        <Button isAct onPress={() => void read.refetch()}>
          {shellWords.again}
        </Button>
      </div>
    </Page>
  );
}
