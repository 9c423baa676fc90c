import { pino } from 'pino';

export interface Log {
  warn(facts: object, what: string): void;
  error(facts: object, what: string): void;
}

/** To standard error, one JSON line each; never what was typed, since it may hold names and addresses. */
export const makeLog = (): Log => pino({ name: 'gramwright', level: 'warn' }, pino.destination(2));
