import { answerRoutes } from './answers.ts';
import { awayRoutes } from './away.ts';
import { certificateRoutes } from './certificates.ts';
import { complaintRoutes } from './complaints.ts';
import { fillingRoutes } from './filling.ts';
import { formulaRoutes } from './formulas.ts';
import { labelRoutes } from './labels.ts';
import { makingRoutes } from './making.ts';
import { orderRoutes } from './orders.ts';
import { productFileRoutes } from './product-files.ts';
import { reachRoutes } from './reach.ts';
import { scalesRoutes } from './scales.ts';
import { stepRoutes } from './step-routes.ts';
import { stockRoutes } from './stock.ts';
import { traceRoutes } from './trace.ts';
import { workshopRoutes } from './workshop.ts';

/** The one table of routes, shared by server, command line and pages. */
export const routes = {
  ...certificateRoutes,
  ...workshopRoutes,
  ...stockRoutes,
  ...formulaRoutes,
  ...orderRoutes,
  ...makingRoutes,
  ...stepRoutes,
  ...fillingRoutes,
  ...labelRoutes,
  ...answerRoutes,
  ...traceRoutes,
  ...complaintRoutes,
  ...productFileRoutes,
  ...reachRoutes,
  ...scalesRoutes,
  ...awayRoutes,
};
export type RouteName = keyof typeof routes;

export * as answers from './answers.ts';
export * as away from './away.ts';
export * as certificates from './certificates.ts';
export * as complaints from './complaints.ts';
export type { Amount, Market, Saying, Stamp } from './fields.ts';
export * as fields from './fields.ts';
export * as filling from './filling.ts';
export * as formulas from './formulas.ts';
export * as labels from './labels.ts';
export * as making from './making.ts';
export * as orders from './orders.ts';
export * as productFiles from './product-files.ts';
export * as reach from './reach.ts';
export type { OpenTo, Route } from './route.ts';
export { saying } from './saying.ts';
export * as scales from './scales.ts';
export * as steps from './steps.ts';
export * as stock from './stock.ts';
export * as trace from './trace.ts';
export * as workshop from './workshop.ts';
