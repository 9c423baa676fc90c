import type { UseCases } from '../use-case.ts';
import { getScaleRecord } from './get-scale-record.ts';
import { recordScaleCheck } from './record-scale-check.ts';
import { recordScaleTest } from './record-scale-test.ts';

export const scaleUseCases = { getScaleRecord, recordScaleTest, recordScaleCheck } satisfies UseCases<
  'getScaleRecord' | 'recordScaleTest' | 'recordScaleCheck'
>;
