/** What was done at the bench while a tablet was away. */
export const awayRoutes = {};
