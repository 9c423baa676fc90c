/** Reaching the workshop from its tablets and phones. */
export const reachRoutes = {};
