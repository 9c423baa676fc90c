/** Targets made anew while a batch is under way, weighings in parts, makings without a recipe. */
export type WeighingTables = Record<never, never>;
