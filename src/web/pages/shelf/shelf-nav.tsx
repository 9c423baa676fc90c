import { shelfWords } from '../../../words/index.ts';
import { SideLinks } from '../../parts/side-links.tsx';

export const ShelfNav = () => (
  <SideLinks
    label={shelfWords.title}
    links={[
      { to: '/shelf', name: shelfWords.title },
      { to: '/materials', name: shelfWords.materials },
      { to: '/shelf/opening', name: shelfWords.opening },
    ]}
  />
);
