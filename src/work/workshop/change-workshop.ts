import { Temporal } from 'temporal-polyfill';
import { done, problem } from '../../core/problem.ts';
import { giveUp, readWorkshop, updateWorkshop } from '../../storage/index.ts';
import { changedMeanwhile, record } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewWorkshop } from './get-workshop.ts';

export const changeWorkshop: UseCase<'changeWorkshop'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const current = await readWorkshop(tx);
      if (!current) giveUp(problem('workshop-not-begun', 'workshop'));
      if (!isTimeZone(body.details.timeZone, context.machine.now()))
        giveUp(problem('time-zone-unknown', 'details.timeZone', { found: body.details.timeZone }));
      await tell({
        kind: 'workshop-changed',
        subjectKind: 'workshop',
        subjectId: 'workshop',
        payload: body.details,
      });
      if (!(await updateWorkshop(tx, JSON.stringify(body.details), body.version))) {
        const { name } = JSON.parse(current.details) as { name: string };
        giveUp(changedMeanwhile('workshop', body.version, current.version, name));
      }
      return 'workshop';
    },
    async () => done(await viewWorkshop(context)),
  );

/** Whether the calendar knows this IANA name; a wrong one would put every date of the workshop in doubt. */
function isTimeZone(name: string, now: string): boolean {
  try {
    Temporal.Instant.from(now).toZonedDateTimeISO(name);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}
