import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

export const reachRoutes = [
  createRoute({
    getParentRoute: () => rootRoute,
    path: '/pair',
    component: lazyRouteComponent(() => import('./pair-page.tsx'), 'PairPage'),
  }),
];
