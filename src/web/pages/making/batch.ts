import type { AnswerOf } from '../../api/shapes.ts';

export type Batch = AnswerOf<'getBatch'>;
export type Screen = Batch['screens'][number];
export type Addition = Extract<Screen, { kind: 'addition' }>;
