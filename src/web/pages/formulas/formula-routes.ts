import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const formulaRoutes = [
  createRoute({
    getParentRoute,
    path: '/formulas',
    component: lazyRouteComponent(() => import('./formulas-page.tsx'), 'FormulasPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/formulas/new',
    component: lazyRouteComponent(() => import('./new-formula-page.tsx'), 'NewFormulaPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/formulas/$id',
    component: lazyRouteComponent(() => import('./formula-page.tsx'), 'FormulaPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/formulas/$id/recipe',
    component: lazyRouteComponent(() => import('./recipe-page.tsx'), 'RecipePage'),
  }),
  createRoute({
    getParentRoute,
    path: '/formulas/$id/check',
    component: lazyRouteComponent(() => import('./check-page.tsx'), 'CheckPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/reports',
    component: lazyRouteComponent(() => import('./reports-page.tsx'), 'ReportsPage'),
  }),
];
