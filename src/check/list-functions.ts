import type { FunctionTold } from '../core/safety/index.ts';
import { LISTED_FUNCTIONS } from '../core/safety/index.ts';
import type { OpenedRevision } from './checked.ts';
import { nameLookedUp } from './open-composition.ts';

/** Materials that the workshop has as something which only listed substances may be; a scent may be anything. */
export const listFunctions = ({ kinds }: Pick<OpenedRevision, 'kinds'>): FunctionTold[] =>
  kinds.flatMap(({ details }) => {
    const as = LISTED_FUNCTIONS.find((one) => one === details.role);
    if (as === undefined) return [];
    return [{ name: nameLookedUp(details), as, parts: details.constituents.map(({ name }) => name) }];
  });
