import { calculations } from '../catalogue/index.ts';
import { done } from '../core/problem.ts';

/** The catalogue's list, without its shapes: those stand in the docs and in `gramwright calc --help NAME`. */
export const listCalculations = () =>
  done(
    calculations.map(({ name, title, summary, equation, validRange, sources }) => ({
      name,
      title,
      summary,
      equation,
      validRange,
      sources: [...sources],
    })),
  );
