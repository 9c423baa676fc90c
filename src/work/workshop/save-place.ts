import { problem } from '../../core/problem.ts';
import { giveUp, insertPlace, listPlaces } from '../../storage/index.ts';
import { record, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';

export const savePlace: UseCase<'savePlace'> = (context, { body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const places = await listPlaces(tx);
      if (places.some((place) => place.name.toLowerCase() === body.name.toLowerCase()))
        giveUp(problem('place-name-taken', 'name', { found: body.name }));
      const place = { id: context.machine.newId(), name: body.name, kind: body.kind };
      await tell({ kind: 'place-added', subjectKind: 'place', subjectId: place.id, payload: place });
      await insertPlace(tx, place);
      return place.id;
    },
    viewId,
  );
