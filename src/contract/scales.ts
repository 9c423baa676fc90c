/** Scales: their tests, their daily check. */
export const scalesRoutes = {};
