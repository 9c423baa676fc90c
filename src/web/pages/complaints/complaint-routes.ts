import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

/** `/complaints/new?product=ID&run=ID`: what it is about already. */
const readSearch = (
  search: Record<string, unknown>,
): { readonly product?: string; readonly run?: string } => ({
  ...(typeof search.product === 'string' ? { product: search.product } : {}),
  ...(typeof search.run === 'string' ? { run: search.run } : {}),
});

export const complaintRoutes = [
  createRoute({
    getParentRoute,
    path: '/complaints',
    component: lazyRouteComponent(() => import('./complaints-page.tsx'), 'ComplaintsPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/complaints/new',
    validateSearch: readSearch,
    component: lazyRouteComponent(() => import('./new-complaint-page.tsx'), 'NewComplaintPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/complaints/$id',
    component: lazyRouteComponent(() => import('./complaint-page.tsx'), 'ComplaintPage'),
  }),
];
