import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const materialRoutes = [
  createRoute({
    getParentRoute,
    path: '/materials',
    component: lazyRouteComponent(() => import('./materials-page.tsx'), 'MaterialsPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/materials/new',
    component: lazyRouteComponent(() => import('./new-material-page.tsx'), 'NewMaterialPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/materials/$id',
    component: lazyRouteComponent(() => import('./material-page.tsx'), 'MaterialPage'),
  }),
];
