import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

/** What a plan begins with: `/making/new?formula=ID` or `?product=ID&units=5`. */
export interface PlanSearch {
  readonly formula?: string | undefined;
  readonly product?: string | undefined;
  readonly units?: number | undefined;
  readonly grams?: string | undefined;
}

const readSearch = (search: Record<string, unknown>): PlanSearch => ({
  ...(typeof search.formula === 'string' ? { formula: search.formula } : {}),
  ...(typeof search.product === 'string' ? { product: search.product } : {}),
  ...(Number.isInteger(Number(search.units)) && Number(search.units) > 0
    ? { units: Number(search.units) }
    : {}),
  ...(search.grams === undefined ? {} : { grams: String(search.grams) }),
});

export const makingRoutes = [
  createRoute({
    getParentRoute,
    path: '/making',
    component: lazyRouteComponent(() => import('./making-page.tsx'), 'MakingPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/making/new',
    validateSearch: readSearch,
    component: lazyRouteComponent(() => import('./plan-page.tsx'), 'PlanPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/making/$id',
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
    path: '/labels',
    component: lazyRouteComponent(() => import('../labels/labels-page.tsx'), 'LabelsPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/labels/$id',
    component: lazyRouteComponent(() => import('../labels/label-page.tsx'), 'LabelPage'),
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
