import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';

export const getBatch: UseCase<'getBatch'> = (context, { params }) => viewBatch(context, params.id ?? '');
