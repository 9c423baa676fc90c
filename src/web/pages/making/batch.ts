import type { AnswerOf } from '../../api/shapes.ts';

type Fetched = AnswerOf<'getBatch'>;

/** As the workshop told it, with what lies on this tablet only: `isKept` marks that. */
export type Screen = Fetched['screens'][number] & { readonly isKept?: boolean };
export type Batch = Omit<Fetched, 'screens'> & { readonly screens: Screen[] };
export type Step = Extract<Screen, { kind: 'step' }>;
export type Addition = Extract<Screen, { kind: 'addition' }>;
