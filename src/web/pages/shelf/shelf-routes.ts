import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const shelfRoutes = [
  createRoute({
    getParentRoute,
    path: '/shelf',
    component: lazyRouteComponent(() => import('./shelf-page.tsx'), 'ShelfPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/shelf/items/$kind/$id',
    component: lazyRouteComponent(() => import('./item-page.tsx'), 'ItemPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/shelf/weigh',
    component: lazyRouteComponent(() => import('./choose-tub-page.tsx'), 'ChooseTubPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/shelf/lots/$id',
    component: lazyRouteComponent(() => import('./lot-page.tsx'), 'LotPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/shelf/lots/$id/weigh',
    component: lazyRouteComponent(() => import('./weigh-page.tsx'), 'WeighPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/shelf/receive/{-$materialId}',
    component: lazyRouteComponent(() => import('./receive-page.tsx'), 'ReceivePage'),
  }),
  createRoute({
    getParentRoute,
    path: '/shelf/opening/{-$materialId}',
    component: lazyRouteComponent(() => import('./opening-page.tsx'), 'OpeningPage'),
  }),
];
