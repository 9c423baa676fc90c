import { sayDecimal } from '../say-figure.ts';

const entries = (count: number): string => (count === 1 ? '1 entry' : `${sayDecimal(count)} entries`);

/** A tablet away from the workshop's computer, and back. */
export const awayWords = {
  saved: 'saved on this tablet and the workshop',
  waiting: (count: number) => `${entries(count)} on this tablet, waiting for the workshop`,
  sending: (count: number) => (count === 0 ? 'sending' : `sending ${entries(count)}`),
  notLasting: (count: number) =>
    `${entries(count)} in this window only: this browser keeps nothing, so leave it open until the workshop answers`,
  needsPairing: (count: number) =>
    `${entries(count)} on this tablet: it has to be paired with the workshop again`,
  needsPerson: (count: number) => `${entries(count)} on this tablet: enter your PIN to send them`,
  away: 'not connected',
  knownAt: (time: string) => `Not connected: as known at ${time}.`,
  awaySays:
    'What you enter at the bench is kept on this tablet and sent when the workshop answers. Other pages have to wait for it.',
  onTabletOnly: 'on this tablet only',
  held: {
    title: 'Entries that wait on this tablet',
    somebody: 'somebody who is not known any more',
    locked: (name: string) =>
      `What ${name} entered waits here for ${name}’s PIN. Choose ${name} above and enter it, or hand it in as told: it then asks at the workshop.`,
    refused: (name: string, why: string) => `What ${name} entered stays on this tablet: ${why}`,
    again: 'Try again',
    handIn: (name: string) => `Hand it in as told by ${name}`,
  },
  weighWaits: (count: number) =>
    `${entries(count)} of this making on this tablet, waiting for the workshop: weigh on once it is there.`,
  finishWaits: (count: number) =>
    `${entries(count)} of this batch ${count === 1 ? 'is' : 'are'} still on this tablet. Finish once the workshop has ${count === 1 ? 'it' : 'them'}.`,

  claims: {
    title: 'From a tablet that was away',
    page: 'Entries from tablets that were away',
    says: (open: number) =>
      open === 0
        ? 'Nothing from a tablet that was away asks for an answer.'
        : `${entries(open)} from a tablet that was away ${open === 1 ? 'asks' : 'ask'} what is to become of ${open === 1 ? 'it' : 'them'}.`,
    soft: 'Nothing is thrown away: each stands on record as it was entered, and waits for a person to say whether it counts.',
    asks: 'asks for an answer',
    entered: (by: string, reason: string) => `entered after all, says ${by}: ${reason}`,
    aside: (by: string, reason: string) => `set aside, says ${by}: ${reason}`,
    by: (by: string, device: string) => `${by}, on “${device}”`,
    cameIn: 'came in',
    why: 'It was not entered because:',
    stands: 'What stands there:',
    gone: 'What it was about is not here any more, or is closed: it can be set aside only, and stays readable.',
    answer: 'Answer',
    answerTitle: 'What is to become of it?',
    whichAnswer: 'The answer',
    ways: {
      besides: 'Enter it as well: both were done',
      enter: 'Enter it after all',
      instead: 'Enter it in the place of what stands there, which is struck',
      aside: 'Set it aside: it does not count',
    },
    /** What it nearly always is: one tap instead of typing. */
    usual: {
      besides: ['Both went in'],
      enter: ['It was done as it says'],
      instead: ['What stands there was a slip'],
      aside: ['The same, entered by both of us', 'A slip'],
    },
    reason: 'What happened, and why',
    wrongClock: 'That tablet’s clock was wrong: by what is known of it, this was at',
    keep: 'Keep the answer',
    yes: 'Yes, it was as it says: enter it',
    toBatch: (number: string) => `To batch ${number}`,
    toRun: (number: string) => `To filling run ${number}`,
    all: 'See all of them',
  },
  news: {
    weighed: (by: string, item: string, time: string) => `${by} weighed ${item} at ${time}`,
    done: (by: string, step: string, time: string) => `${by}: “${step}” done at ${time}`,
    struck: (by: string, what: string, time: string) => `${by} struck the entry of ${what} at ${time}`,
  },
  clock: {
    ahead: (by: string, here: string, there: string) =>
      `This tablet’s clock is ${by} ahead: it says ${here}, the workshop’s says ${there}. Set its clock right: what is entered without the workshop may carry a wrong time.`,
    behind: (by: string, here: string, there: string) =>
      `This tablet’s clock is ${by} behind: it says ${here}, the workshop’s says ${there}. Set its clock right: what is entered without the workshop may carry a wrong time.`,
    minutes: (count: number) => (count === 1 ? '1 minute' : `${sayDecimal(count)} minutes`),
    hours: (count: number) => (count === 1 ? '1 hour' : `${sayDecimal(count)} hours`),
    days: (count: number) => (count === 1 ? '1 day' : `${sayDecimal(count)} days`),
  },
  wake: {
    notHeld:
      'This browser does not keep the screen on: set the tablet’s own sleep to a long time while you weigh.',
  },
} as const;
