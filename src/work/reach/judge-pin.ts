import { type Problem, problem } from '../../core/problem.ts';

/** What everybody tries first: one digit over and over, or digits in a row. */
export function judgePin(pin: string, where: string): Problem | undefined {
  const steps = new Set([...pin].slice(1).map((digit, place) => Number(digit) - Number(pin[place])));
  const [only] = steps;
  const isPlain = steps.size === 1 && only !== undefined && Math.abs(only) <= 1;
  return isPlain ? problem('pin-too-plain', where) : undefined;
}
