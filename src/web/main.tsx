import '@fontsource-variable/source-sans-3/index.css';
import './tokens.css';
import './base.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { I18nProvider } from 'react-aria-components';
import { createRoot } from 'react-dom/client';
import { queryClient } from './api/query-client.ts';
import { startLive } from './away/live.ts';
import { startReplaying } from './away/replay.ts';
import { startServiceWorker } from './away/service-worker.ts';
import { router } from './router.tsx';
import { startKeepingFocus } from './shell/keep-focus.ts';

const place = document.getElementById('page');
if (!place) throw new Error('the page has no place to be drawn in');

createRoot(place).render(
  <StrictMode>
    <I18nProvider locale="en-GB">
      <QueryClientProvider client={queryClient}>
        <RouterProvider router={router} />
      </QueryClientProvider>
    </I18nProvider>
  </StrictMode>,
);

startKeepingFocus();
void startReplaying();
startLive();
void startServiceWorker();
