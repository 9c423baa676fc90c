import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

export const workshopRoutes = [
  createRoute({
    getParentRoute: () => rootRoute,
    path: '/workshop',
    component: lazyRouteComponent(() => import('./workshop-page.tsx'), 'WorkshopPage'),
  }),
];
