import { Outlet } from '@tanstack/react-router';
import { shellWords } from '../../words/index.ts';
import { useRead } from '../api/use-read.ts';
import { HeldEntries } from '../away/held-entries.tsx';
import { StartPage } from '../pages/start/start-page.tsx';
import { Loaded } from '../parts/loaded.tsx';
import { AppHeader } from './app-header.tsx';
import { LeaveGuard } from './leave-guard.tsx';
import { NoticeLine } from './notice-line.tsx';
import { MAIN_ID, SkipLink } from './skip-link.tsx';
import { TroubleBanner } from './trouble-banner.tsx';

/** The frame of every page. A workshop that has not begun shows the first start instead. */
export function AppShell() {
  const read = useRead('getWorkshop');
  const hasBegun = read.data?.state === 'ready';
  return (
    <>
      <SkipLink />
      {hasBegun && <AppHeader isExample={read.data?.isExample ?? false} />}
      <TroubleBanner />
      <HeldEntries />
      <main id={MAIN_ID} tabIndex={-1}>
        <Loaded read={read} title={shellWords.product}>
          {() => (hasBegun ? <Outlet /> : <StartPage />)}
        </Loaded>
      </main>
      <NoticeLine />
      <LeaveGuard />
    </>
  );
}
