import type { UseCases } from '../use-case.ts';
import { findLots } from './find-lots.ts';
import { traceLot } from './trace-lot.ts';

export const traceUseCases = { findLots, traceLot } satisfies UseCases<'findLots' | 'traceLot'>;
