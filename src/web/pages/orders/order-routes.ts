import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { rootRoute } from '../../shell/root-route.tsx';

const getParentRoute = () => rootRoute;

export const orderRoutes = [
  createRoute({
    getParentRoute,
    path: '/orders',
    component: lazyRouteComponent(() => import('./orders-page.tsx'), 'OrdersPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/orders/new',
    component: lazyRouteComponent(() => import('./new-order-page.tsx'), 'NewOrderPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/orders/customers',
    component: lazyRouteComponent(() => import('./customers-page.tsx'), 'CustomersPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/orders/$id',
    component: lazyRouteComponent(() => import('./order-page.tsx'), 'OrderPage'),
  }),
  createRoute({
    getParentRoute,
    path: '/orders/$id/change',
    component: lazyRouteComponent(() => import('./change-order-page.tsx'), 'ChangeOrderPage'),
  }),
];
