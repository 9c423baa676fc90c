import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const productFileRoutes = [
  createRoute({
    getParentRoute,
    path: '/products/$id/file',
    component: lazyRouteComponent(() => import('./product-file-page.tsx'), 'ProductFilePage'),
  }),
  createRoute({
    getParentRoute,
    path: '/products/$id/file/change',
    component: lazyRouteComponent(() => import('./change-file-page.tsx'), 'ChangeFilePage'),
  }),
  createRoute({
    getParentRoute,
    path: '/products/$id/notification',
    component: lazyRouteComponent(() => import('./notification-page.tsx'), 'NotificationPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/formulas/$id/worksheet',
    component: lazyRouteComponent(() => import('./worksheet-page.tsx'), 'WorksheetPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/reports/$id/changes',
    component: lazyRouteComponent(() => import('./report-changes-page.tsx'), 'ReportChangesPage'),
  }),
];
