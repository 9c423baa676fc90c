import { done } from '../../core/problem.ts';
import type { UseCase, UseCases } from '../use-case.ts';
import { enterComplaint } from './enter-complaint.ts';
import { followComplaint } from './follow-complaint.ts';
import { viewComplaint, viewComplaints } from './view-complaint.ts';

export { type ComplaintView, viewComplaints } from './view-complaint.ts';

const listComplaints: UseCase<'listComplaints'> = async (context, { query }) =>
  done(await viewComplaints(context, query.product === undefined ? undefined : [query.product]));

const getComplaint: UseCase<'getComplaint'> = (context, { params: { id = '' } }) =>
  viewComplaint(context, id);

export const complaintUseCases = {
  listComplaints,
  getComplaint,
  enterComplaint,
  followComplaint,
} satisfies UseCases<'listComplaints' | 'getComplaint' | 'enterComplaint' | 'followComplaint'>;
