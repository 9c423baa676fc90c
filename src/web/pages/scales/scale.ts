import type { AnswerOf } from '../../api/shapes.ts';
import type { Scale } from '../workshop/workshop.ts';

export type { Scale };
export type ScaleRecord = AnswerOf<'getScaleRecord'>;
export type ScaleTest = ScaleRecord['tests'][number];
export type ScaleCheck = ScaleRecord['checks'][number];
