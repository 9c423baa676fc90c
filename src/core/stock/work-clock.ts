import { Temporal } from 'temporal-polyfill';

/** Instants as whole minutes since 1970, which add; `Infinity` is a time that nobody knows. */
export type Minutes = number;

const clockTime = (time: string): Temporal.PlainTime => Temporal.PlainTime.from(time);

/** The workshop's own mornings, evenings and days. Knows no present: every time is given. */
export class WorkClock {
  readonly #zone: string;
  readonly #from: Temporal.PlainTime | null;
  readonly #to: Temporal.PlainTime | null;
  readonly #known = new Map<Minutes, Temporal.ZonedDateTime>();

  constructor(timeZone: string, workday: { readonly from: string; readonly to: string } | null) {
    this.#zone = timeZone;
    this.#from = workday && clockTime(workday.from);
    this.#to = workday && clockTime(workday.to);
  }

  minutesOf(instant: string): Minutes {
    return Math.ceil(Temporal.Instant.from(instant).epochMilliseconds / 60_000);
  }

  instantOf(minutes: Minutes): string | null {
    if (!Number.isFinite(minutes)) return null;
    return `${new Date(minutes * 60_000).toISOString().slice(0, -'.000Z'.length)}Z`;
  }

  dateOf(minutes: Minutes): string {
    return this.#local(minutes).toPlainDate().toString();
  }

  /** When work begins on the day that lies so many days after. */
  morningAfter(minutes: Minutes, days: number): Minutes {
    return this.#morning(this.#local(minutes).toPlainDate().add({ days }));
  }

  /** The day on which something leaves that is ready then: the next, where it gets ready after work. */
  leavesOn(ready: Minutes, now: Minutes): string {
    return this.dateOf(ready <= now ? now : this.#intoWork(ready));
  }

  /** Works from then on, through as many days as it takes. */
  work(ready: Minutes, effort: number): { readonly start: Minutes; readonly end: Minutes } {
    if (!Number.isFinite(ready) || effort <= 0) return { start: ready, end: ready };
    const start = this.#intoWork(ready);
    let at = start;
    let left = effort;
    for (let today = this.#leftToday(at); left > today; today = this.#leftToday(at)) {
      left -= today;
      at = this.morningAfter(at, 1);
    }
    return { start, end: at + Math.ceil(left) };
  }

  /** The same few moments are asked for again and again, and a zone's rules are slow to look up (measured). */
  #local(minutes: Minutes): Temporal.ZonedDateTime {
    const known = this.#known.get(minutes);
    if (known) return known;
    const local = this.#lookUp(minutes);
    this.#known.set(minutes, local);
    return local;
  }

  #lookUp(minutes: Minutes): Temporal.ZonedDateTime {
    return Temporal.Instant.fromEpochMilliseconds(minutes * 60_000).toZonedDateTimeISO(this.#zone);
  }

  #at(date: Temporal.PlainDate, plainTime: Temporal.PlainTime): Minutes {
    return date.toZonedDateTime({ timeZone: this.#zone, plainTime }).epochMilliseconds / 60_000;
  }

  #morning(date: Temporal.PlainDate): Minutes {
    return this.#at(date, this.#from ?? clockTime('00:00'));
  }

  #leftToday(minutes: Minutes): number {
    return this.#to === null ? Infinity : this.#at(this.#local(minutes).toPlainDate(), this.#to) - minutes;
  }

  #intoWork(minutes: Minutes): Minutes {
    const morning = this.#morning(this.#local(minutes).toPlainDate());
    if (minutes <= morning) return this.#from === null ? minutes : morning;
    return this.#leftToday(minutes) > 0 ? minutes : this.morningAfter(minutes, 1);
  }
}
