import { morningRoutes } from './morning/morning-routes.ts';

/** Every page of the application: each room lists its own. */
export const pageRoutes = [...morningRoutes];
