import { done, problem, refused } from '../../core/problem.ts';
import type { UseCase } from '../use-case.ts';

/** A certificate is no secret: its key is. */
export const getAuthority: UseCase<'getAuthority'> = async ({ network }) => {
  const authority = network ? (await network.door.view()).authority : null;
  return authority === null
    ? refused(problem('authority-not-made', 'network'))
    : done({ fileName: 'gramwright-workshop.crt', bytes: new TextEncoder().encode(authority) });
};
