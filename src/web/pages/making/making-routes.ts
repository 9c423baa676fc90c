import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';
import { readPlanSearch } from './plan-search.ts';
import { readBenchSearch } from './use-bench-place.ts';

const getParentRoute = () => rootRoute;

export const makingRoutes = [
  createRoute({
    getParentRoute,
    path: '/making',
    component: lazyRouteComponent(() => import('./making-page.tsx'), 'MakingPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/making/new',
    validateSearch: readPlanSearch,
    component: lazyRouteComponent(() => import('./plan-page.tsx'), 'PlanPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/making/away',
    component: lazyRouteComponent(() => import('../away/claims-page.tsx'), 'ClaimsPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/making/by-hand',
    validateSearch: (search: Record<string, unknown>): { formula?: string } =>
      typeof search.formula === 'string' ? { formula: search.formula } : {},
    component: lazyRouteComponent(() => import('./hand-page.tsx'), 'HandPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/making/$id',
    validateSearch: readBenchSearch,
    component: lazyRouteComponent(() => import('./batch-page.tsx'), 'BatchPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/making/$id/fill',
    component: lazyRouteComponent(() => import('../filling/start-run-page.tsx'), 'StartRunPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/filling/$id',
    component: lazyRouteComponent(() => import('../filling/run-page.tsx'), 'RunPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/trace',
    component: lazyRouteComponent(() => import('../trace/trace-page.tsx'), 'TracePage'),
  }),
  createRoute({
    getParentRoute,
    path: '/trace/$id',
    component: lazyRouteComponent(() => import('../trace/lot-trace-page.tsx'), 'LotTracePage'),
  }),
];
