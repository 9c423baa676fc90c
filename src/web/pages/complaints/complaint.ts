import type { AnswerOf } from '../../api/shapes.ts';

export type Complaint = AnswerOf<'getComplaint'>;
export type Effect = Complaint['effect'];
export type Mark = Complaint['marks'][number];
