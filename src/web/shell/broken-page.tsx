import type { ErrorComponentProps } from '@tanstack/react-router';
import { shellWords } from '../../words/index.ts';
import { problemsOf } from '../api/problems-of.ts';
import { Button } from '../parts/button.tsx';
import { Problems } from '../parts/problems.tsx';
import { Page } from './page.tsx';

const { pageMistake } = shellWords;

export const BrokenPage = ({ error }: ErrorComponentProps) => (
  <Page
    title={pageMistake.title}
    says={pageMistake.says}
    actions={<Button onPress={() => location.reload()}>{pageMistake.reload}</Button>}
  >
    <Problems problems={problemsOf(error)} />
  </Page>
);
