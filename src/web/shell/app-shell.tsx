import { Outlet } from '@tanstack/react-router';
import { lazy, Suspense } from 'react';
import { shellWords } from '../../words/index.ts';
import { useRead } from '../api/use-read.ts';
import { useStore } from '../api/use-store.ts';
import { door } from '../away/door.ts';
import { HeldEntries } from '../away/held-entries.tsx';
import { StartPage } from '../pages/start/start-page.tsx';
import { Loaded } from '../parts/loaded.tsx';
import { Skeleton } from '../parts/skeleton.tsx';
import { AppHeader } from './app-header.tsx';
import { LeaveGuard } from './leave-guard.tsx';
import { NoticeLine } from './notice-line.tsx';
import { MAIN_ID, SkipLink } from './skip-link.tsx';
import { TroubleBanner } from './trouble-banner.tsx';

/** Of no use at the workshop's own computer: fetched by a device that is not let in. */
const PairPage = lazy(async () => ({ default: (await import('../pages/reach/pair-page.tsx')).PairPage }));

/** The frame of every page. A workshop that has not begun shows the first start instead. */
export function AppShell() {
  const read = useRead('getWorkshop');
  const isShutOut = useStore(door) === 'device-not-paired';
  const hasBegun = !isShutOut && read.data?.state === 'ready';
  return (
    <>
      <SkipLink />
      {hasBegun && <AppHeader isExample={read.data?.isExample ?? false} />}
      <TroubleBanner />
      <HeldEntries />
      <main id={MAIN_ID} tabIndex={-1}>
        {isShutOut ? (
          <Suspense fallback={<Skeleton />}>
            <PairPage />
          </Suspense>
        ) : (
          <Loaded read={read} title={shellWords.product}>
            {() => (hasBegun ? <Outlet /> : <StartPage />)}
          </Loaded>
        )}
      </main>
      <NoticeLine />
      <LeaveGuard />
    </>
  );
}
