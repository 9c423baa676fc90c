import { shellWords } from '../../words/index.ts';
import { LinkButton } from '../parts/link-button.tsx';
import { Page } from './page.tsx';

const { notFound } = shellWords;

export const NotFound = () => (
  <Page
    title={notFound.title}
    says={notFound.says}
    actions={<LinkButton to="/">{notFound.home}</LinkButton>}
  />
);
