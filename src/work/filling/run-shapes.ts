import type { z } from 'zod';
import type { filling } from '../../contract/index.ts';

export type RunView = z.output<typeof filling.runView>;
export type Check = RunView['checks'][number];
