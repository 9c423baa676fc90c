import type { AnswerOf } from '../../api/shapes.ts';

export type Report = AnswerOf<'listReports'>[number];
