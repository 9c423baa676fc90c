import { formulaRoutes } from './formulas/formula-routes.ts';
import { makingRoutes } from './making/making-routes.ts';
import { morningRoutes } from './morning/morning-routes.ts';
import { orderRoutes } from './orders/order-routes.ts';

/** Every page of the application: each room lists its own. */
export const pageRoutes = [...morningRoutes, ...orderRoutes, ...formulaRoutes, ...makingRoutes];
