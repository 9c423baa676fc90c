import { createRootRoute } from '@tanstack/react-router';
import { AppShell } from './app-shell.tsx';
import { BrokenPage } from './broken-page.tsx';
import { NotFound } from './not-found.tsx';

export const rootRoute = createRootRoute({
  component: AppShell,
  notFoundComponent: NotFound,
  errorComponent: BrokenPage,
});
