import { problem } from '../../core/problem.ts';
import { giveUp, insertPerson, listPeople, type PersonRow, updatePerson } from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';

type Body = RequestOf<'savePerson'>['body'];

/** People decide by name, so two active people never bear the same one, and somebody always stays to sign. */
export const savePerson: UseCase<'savePerson'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const people = await listPeople(tx);
      const current = people.find((person) => person.id === body.id);
      if (body.id !== undefined && !current) giveUp(thingNotFound('id', body.id));
      refuseUnfit(people, body);
      const id = current?.id ?? context.machine.newId();
      await tell({
        kind: current ? 'person-changed' : 'person-added',
        subjectKind: 'person',
        subjectId: id,
        // People stand in the chain by their number only.
        payload: { isActive: body.isActive },
      });
      const row = { id, name: body.name, is_active: body.isActive ? 1 : 0, version: 1 };
      if (!current) await insertPerson(tx, row);
      else if (body.version === undefined || !(await updatePerson(tx, row, body.version)))
        giveUp(changedMeanwhile('person', body.version, current.version, current.name));
      return id;
    },
    viewId,
  );

function refuseUnfit(people: readonly PersonRow[], body: Body): void {
  const others = people.filter((person) => person.id !== body.id && person.is_active === 1);
  const isTaken = others.some((person) => person.name.toLowerCase() === body.name.toLowerCase());
  if (body.isActive && isTaken) giveUp(problem('person-name-taken', 'name', { found: body.name }));
  if (!body.isActive && others.length === 0)
    giveUp(problem('last-person', 'isActive', { parameters: { name: body.name } }));
}
