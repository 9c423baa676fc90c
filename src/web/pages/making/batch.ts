import type { AnswerOf } from '../../api/shapes.ts';

export type Batch = AnswerOf<'getBatch'>;
export type Screen = Batch['screens'][number];
export type Step = Extract<Screen, { kind: 'step' }>;
export type Addition = Extract<Screen, { kind: 'addition' }>;
