import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const scaleRoutes = [
  createRoute({
    getParentRoute,
    path: '/scales/$id',
    component: lazyRouteComponent(() => import('./scale-page.tsx'), 'ScalePage'),
  }),
  createRoute({
    getParentRoute,
    path: '/scales/$id/test',
    component: lazyRouteComponent(() => import('./scale-test-page.tsx'), 'ScaleTestPage'),
  }),
];
