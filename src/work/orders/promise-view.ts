import type { z } from 'zod';
import type { orders } from '../../contract/index.ts';

export type PromiseView = z.output<typeof orders.promise>;
