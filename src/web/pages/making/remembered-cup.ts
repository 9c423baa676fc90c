import { kept } from '../../api/kept.ts';

export interface RememberedCup {
  readonly cupMl: string;
  readonly tare: string;
}

/** A measuring cup is weighed and measured once; this tablet remembers it. */
export function readCup(): RememberedCup | undefined {
  try {
    const read = JSON.parse(kept.read('cup') ?? 'null') as Partial<RememberedCup> | null;
    return typeof read?.cupMl === 'string' && typeof read.tare === 'string'
      ? { cupMl: read.cupMl, tare: read.tare }
      : undefined;
  } catch {
    // Written by another edition of the page.
    return undefined;
  }
}

export const rememberCup = (cup: RememberedCup): void => kept.write('cup', JSON.stringify(cup));
