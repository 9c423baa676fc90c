import { LinkButton } from '../parts/link-button.tsx';
import { Page } from './page.tsx';

interface Props {
  readonly title: string;
  /** What is missing. */
  readonly says: string;
  readonly soft?: string;
  /** Where it is put right. */
  readonly to: string;
  readonly act: string;
}

/** In the place of a form that cannot be filled in yet: what has to be there first, and the way to it. */
export const NeedsPage = ({ title, says, soft, to, act }: Props) => (
  <Page
    title={title}
    above={title}
    says={says}
    soft={soft}
    actions={
      <LinkButton to={to} isAct>
        {act}
      </LinkButton>
    }
    isNarrow
  />
);
