import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

/** Where to go on once the tub is weighed: a page of ours, such as the bench that sent here. */
export interface WeighSearch {
  readonly back?: string | undefined;
}

const readBack = ({ back }: Record<string, unknown>): WeighSearch =>
  typeof back === 'string' && /^\/[A-Za-z0-9/-]+$/.test(back) && !back.startsWith('//') ? { back } : {};

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
    validateSearch: readBack,
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
