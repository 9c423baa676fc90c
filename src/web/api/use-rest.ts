import { useState } from 'react';

/** Longer than any double click (common practice, no source: half a second on most desks), shorter than a second thought. */
const REST_MS = 700;

/** After something was made, the second half of a double click makes nothing more. */
export function useRest(): { readonly isOn: () => boolean; readonly begin: () => void } {
  const [rest] = useState(() => {
    let until = 0;
    return {
      isOn: () => performance.now() < until,
      begin: () => {
        until = performance.now() + REST_MS;
      },
    };
  });
  return rest;
}
