import type { UseCases } from '../use-case.ts';
import { getMorning } from './get-morning.ts';

export const morningUseCases = { getMorning } satisfies UseCases<'getMorning'>;
