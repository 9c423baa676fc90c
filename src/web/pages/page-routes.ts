import { complaintRoutes } from './complaints/complaint-routes.ts';
import { formulaRoutes } from './formulas/formula-routes.ts';
import { labelRoutes } from './labels/label-routes.ts';
import { makingRoutes } from './making/making-routes.ts';
import { materialRoutes } from './materials/material-routes.ts';
import { morningRoutes } from './morning/morning-routes.ts';
import { orderRoutes } from './orders/order-routes.ts';
import { productFileRoutes } from './product-files/product-file-routes.ts';
import { productRoutes } from './products/product-routes.ts';
import { reachRoutes } from './reach/reach-routes.ts';
import { scaleRoutes } from './scales/scale-routes.ts';
import { shelfRoutes } from './shelf/shelf-routes.ts';
import { workshopRoutes } from './workshop/workshop-routes.ts';

/** Every page of the application: each room lists its own. */
export const pageRoutes = [
  ...morningRoutes,
  ...orderRoutes,
  ...productRoutes,
  ...productFileRoutes,
  ...shelfRoutes,
  ...materialRoutes,
  ...workshopRoutes,
  ...scaleRoutes,
  ...formulaRoutes,
  ...makingRoutes,
  ...labelRoutes,
  ...complaintRoutes,
  ...reachRoutes,
];
