import { createRouter } from '@tanstack/react-router';
import { pageRoutes } from './pages/page-routes.ts';
import { rootRoute } from './shell/root-route.tsx';

export const router = createRouter({
  routeTree: rootRoute.addChildren(pageRoutes),
  defaultPreload: 'intent',
  scrollRestoration: true,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
