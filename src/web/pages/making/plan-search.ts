/** What a plan begins with: `/making/new?formula=ID` or `?product=ID&units=5`. */
export interface PlanSearch {
  readonly formula?: string | undefined;
  readonly product?: string | undefined;
  readonly units?: number | undefined;
  readonly grams?: string | undefined;
}

export const readPlanSearch = (search: Record<string, unknown>): PlanSearch => ({
  ...(typeof search.formula === 'string' ? { formula: search.formula } : {}),
  ...(typeof search.product === 'string' ? { product: search.product } : {}),
  ...(Number.isInteger(Number(search.units)) && Number(search.units) > 0
    ? { units: Number(search.units) }
    : {}),
  ...(search.grams === undefined ? {} : { grams: String(search.grams) }),
});
