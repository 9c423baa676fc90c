import { type Figure, quantile } from './measure.ts';
import { withProgram } from './running-program.ts';

const STARTS = 5;

/** From starting the built program on a workshop that is there already to the line that says where it listens. */
export async function benchStart(folder: string): Promise<Figure> {
  const times: number[] = [];
  for (let start = 0; start < STARTS; start += 1)
    times.push(await withProgram(folder, async (program) => program.startMs));
  return {
    name: `start to listening, once built: median of ${STARTS}`,
    value: quantile(times, 0.5),
    unit: 'ms',
    beside: 'aim 1,000',
  };
}
