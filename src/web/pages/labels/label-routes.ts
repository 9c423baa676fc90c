import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const labelRoutes = [
  createRoute({
    getParentRoute,
    path: '/labels',
    component: lazyRouteComponent(() => import('./labels-page.tsx'), 'LabelsPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/labels/$id',
    component: lazyRouteComponent(() => import('./label-page.tsx'), 'LabelPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/labels/products/$id',
    component: lazyRouteComponent(() => import('./design-page.tsx'), 'DesignPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/labels/sheets/new',
    component: lazyRouteComponent(() => import('./sheet-page.tsx'), 'NewSheetPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/labels/sheets/$id',
    component: lazyRouteComponent(() => import('./sheet-page.tsx'), 'SheetPage'),
  }),
];
