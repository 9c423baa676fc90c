import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const productRoutes = [
  createRoute({
    getParentRoute,
    path: '/products',
    component: lazyRouteComponent(() => import('./products-page.tsx'), 'ProductsPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/products/new',
    component: lazyRouteComponent(() => import('./new-product-page.tsx'), 'NewProductPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/products/$id',
    component: lazyRouteComponent(() => import('./product-page.tsx'), 'ProductPage'),
  }),
];
