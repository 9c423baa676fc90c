import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

/** `/reports?formula=ID`: a new report that covers this formula. */
const readReportSearch = (search: Record<string, unknown>): { readonly formula?: string } =>
  typeof search.formula === 'string' ? { formula: search.formula } : {};

/** `/formulas/ID/check?markets=GB,NI`: which markets it is looked at for; without, where it is sold. */
const readCheckSearch = (search: Record<string, unknown>): { readonly markets?: string } =>
  typeof search.markets === 'string' && search.markets !== '' ? { markets: search.markets } : {};

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
    path: '/formulas/$id/scent',
    component: lazyRouteComponent(() => import('./scent-page.tsx'), 'ScentPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/formulas/$id/check',
    validateSearch: readCheckSearch,
    component: lazyRouteComponent(() => import('./check-page.tsx'), 'CheckPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/reports',
    validateSearch: readReportSearch,
    component: lazyRouteComponent(() => import('./reports-page.tsx'), 'ReportsPage'),
  }),
];
