import { makeStore } from './make-store.ts';

/** What was just done, said once at the foot of the page and to screen readers. */
export const notice = makeStore('');

let forgetting: ReturnType<typeof setTimeout> | undefined;

export function tell(text: string): void {
  clearTimeout(forgetting);
  notice.write(text);
  forgetting = setTimeout(() => notice.write(''), 6_000);
}
