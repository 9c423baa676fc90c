import { sayDateWithYear } from '../say-date.ts';
import { sayDecimal, sayGrams } from '../say-figure.ts';

const DECIDES = {
  class: 'the error in service of its class, half a step of rounding',
  repeatability: 'twice what it repeats within (up to its next step)',
  readability: 'the step that it shows',
} as const;

const SOURCES = {
  class: 'OIML R 76-1, table 6; in service twice that (SI 1995/1907)',
  repeatability: 'USP general chapter 41: twice the standard deviation',
  readability: 'USP general chapter 41: no scale repeats better than 0.41 of its step',
} as const;

/** A workshop's scales: the test of ten weighings, the daily check, its chart, and what reads a scale by itself. */
export const scaleWords = {
  back: 'The workshop',
  above: 'Scale',
  says: (capacity: string, readability: string) => `Up to ${capacity}, in steps of ${readability}.`,
  see: 'Tests, checks, chart',
  repeats: {
    measured: (grams: string, since: string) => `repeats within ${grams}, measured ${since}`,
    typed: (grams: string) => `repeats within ${grams}, as typed`,
    unknown: 'how well it repeats is not known: counted from its step',
  },
  state: {
    good: (at: string) => `checked ${at}: good`,
    due: 'to be checked before it weighs today',
    held: (at: string) => `did not pass its check ${at}: weighs nothing until it does`,
    noWeight: 'no check weight known',
  },
  test: {
    title: 'How well it repeats',
    none: 'Not tested yet. Ten weighings of one weight take five minutes, and every plan counts with them from then on.',
    says: (grams: string) => `The same weight, put on ten times, differs by ${grams} (standard deviation).`,
    allSame: (step: string) =>
      `The same weight read the same every time: better than its step of ${step} tells. Counted as 0.41 of a step.`,
    used: 'The plan counts with it.',
    notUsed: 'The plan counts with something else: what was typed later, or a step that is another by now.',
    leastFor: (percent: number) => `Smallest weight within ${sayDecimal(percent)} %`,
    least: 'What it can weigh',
    leastSays: (one: string, two: string) =>
      `Within 2 % it weighs ${two} and more; within 1 %, ${one} and more.`,
    begin: 'Test it: ten weighings',
    again: 'Test it again',
    earlier: 'Earlier tests',
    by: (who: string | null, at: string) => (who === null ? at : `${who}, ${at}`),
    readings: 'Readings',
    mean: 'mean',
    weight: 'Weight',
  },
  guide: {
    title: (scale: string) => `Ten weighings on ${scale}`,
    intro:
      'Take one thing that does not change, near what you mostly weigh or near half of what the scale holds: a check weight, or a full jar with its lid on. It need not be exact; it has to be the same.',
    weightLabel: 'About what it weighs',
    weightHint: 'So that a slip is noticed.',
    start: 'Begin',
    of: (place: number, all: number) => `Weighing ${sayDecimal(place)} of ${sayDecimal(all)}`,
    putOn: 'Empty scale at 0? Put it on, wait until the digits stand, type them.',
    reading: 'The scale shows',
    next: 'Take it off: next',
    last: 'That was the last: work it out',
    stop: 'Leave the test',
    undo: 'Strike the last reading',
    taken: (since: string) => (since === '' ? 'Taken so far' : `Taken so far, since ${since}`),
    anew: 'Begin anew',
    saved: 'The test is kept. Plans count with it from now on.',
    isRight: 'It is right as it stands',
    correct: 'Read it again',
  },
  check: {
    title: (scale: string) => `Check ${scale}`,
    before: 'Before the first weighing of the day.',
    onceMore: 'Check it once more',
    putOn: (weight: string) => `Empty scale at 0? Put the ${weight} weight on.`,
    mayBe: (low: string, high: string) => `It may show ${low} to ${high}.`,
    why: (by: keyof typeof DECIDES, limit: string) =>
      `${limit} either way: ${DECIDES[by]} and the weight’s own tolerance.`,
    source: (by: keyof typeof SOURCES) => SOURCES[by],
    reading: 'The scale shows',
    enter: 'Enter the check',
    good: (off: string) => `Good: ${off} off. It may weigh today.`,
    bad: (off: string, limit: string) => `Not good: ${off} off, and it may be ${limit}.`,
    first: 'Before you try again',
    steps: [
      'Does it stand level, on something firm, away from draught and from what shakes?',
      'Take everything off, wipe the plate, press zero.',
      'Has it been on for a quarter of an hour, in this room? Let it warm up.',
      'Is it the right weight, clean and dry?',
    ],
    again: 'Try again',
    held: 'It weighs nothing until it passes: plans and bench take another scale. If it fails once more, have it adjusted.',
    noWeight: 'Nobody has said which weight this scale is checked with.',
    toWeight: 'Give it a check weight',
    noLimit: 'Its class does not cover that weight: look at class, interval and capacity once more.',
    rough:
      'The weight itself may be off by more than a third of what the scale may: a better one tells more.',
    kept: 'The check is kept.',
    isRight: 'That is what it shows: enter it',
    correct: 'Read it again',
  },
  weight: {
    title: 'Its check weight',
    mass: 'Check weight',
    massHint: (proposed: readonly number[]) =>
      proposed.length === 0
        ? 'Near half of what the scale holds.'
        : `Near half of what it holds, or near what you mostly weigh: ${proposed.map((grams) => sayGrams(String(grams))).join(' or ')}.`,
    tolerance: 'How far off the weight may be',
    toleranceHint: 'It stands on its paper. Class M1 of 100 g: 0.005 g. Left empty it counts as exact.',
    saved: 'The check weight is saved.',
  },
  chart: {
    title: 'Checks over time',
    none: 'No check yet.',
    label: (count: number, from: string, until: string, outside: number) =>
      `${sayDecimal(count)} checks from ${sayDateWithYear(from)} to ${sayDateWithYear(until)}; ${
        outside === 0
          ? 'none lies beyond the limits'
          : outside === 1
            ? 'one lies beyond the limits'
            : `${sayDecimal(outside)} lie beyond the limits`
      }.`,
    from: {
      checks:
        'Limits from how the checks themselves scatter: chart of individuals, three standard deviations.',
      errors: (enough: number, has: number) =>
        has < enough
          ? `Limits of the check itself; from ${sayDecimal(enough)} checks on they come from the checks (there are ${sayDecimal(has)}).`
          : 'Limits of the check itself: the checks scatter less than the scale’s own step.',
    },
    steady: 'It stands still.',
    drifts: 'It drifts to one side: have it adjusted before a check fails.',
    outside: (count: number) =>
      count === 1
        ? 'One check lies beyond the limits.'
        : `${sayDecimal(count)} checks lie beyond the limits.`,
    upper: 'upper limit',
    lower: 'lower limit',
    centre: 'middle',
    head: { on: 'Day', reading: 'Showed', off: 'Off by', limit: 'May be off', result: 'Result', by: 'Who' },
    table: 'The checks as a table',
    good: 'good',
    bad: 'not good',
    print: 'Print this page',
    otherWeights: (count: number) =>
      count === 1
        ? 'One earlier check was made with another weight and is in the table only.'
        : `${sayDecimal(count)} earlier checks were made with other weights and are in the table only.`,
  },
  reader: {
    title: 'A scale that tells its reading',
    about:
      'Not needed: digits may always be typed. A scale that types like a keyboard works at once, in any weight field. Others are connected here, in a browser that can.',
    take: 'Take it',
    shows: (name: string) => `${name} shows`,
    moving: 'moving',
    settled: 'settled',
    silent: (seconds: number) =>
      seconds < 120
        ? `It has told nothing for ${sayDecimal(seconds)} s: is it on, and does its cable hold?`
        : `It has told nothing for ${sayDecimal(Math.floor(seconds / 60))} minutes: is it on, and does its cable hold?`,
    isTaken: 'Taken. It is offered again once the scale has moved.',
    restless: 'It does not settle: look for draught, shaking, a warm vessel or static, or read it yourself.',
    typed: 'From the scale. Look, then enter it.',
    told: (value: string, unit: string) => `(${value} ${unit})`,
    units: {
      line: 'as it stands behind the number',
      mg: 'milligrams',
      g: 'grams',
      kg: 'kilograms',
      ct: 'carats',
      grain: 'grains',
      dwt: 'pennyweights',
      oz: 'ounces',
      ozt: 'troy ounces',
      lb: 'pounds',
      tonne: 'tonnes',
      ton: 'short tons',
    },
    trouble: {
      fault: 'The scale reports a fault.',
      'over-limit': 'More lies on the scale than it holds.',
      'wants-calibration': 'The scale asks to be adjusted.',
      'wants-zero': 'The scale asks for zero: take everything off and press zero.',
      'unit-unknown': 'The scale tells a unit that is not known here: set it to grams.',
      'not-understood': 'The scale tells no weight just now.',
    },
    connected: (name: string) => `${name} is connected to this tablet.`,
    connectHid: 'Connect a scale by USB (weighing device)',
    connectSerial: 'Connect a scale by a serial port',
    disconnect: 'Let go of it',
    cannot:
      'This browser knows neither WebHID nor Web Serial. Typing, and scales that type, work here all the same.',
    troubles: {
      refused: 'Nothing was chosen.',
      lost: 'The scale is no longer there: is its cable in?',
      busy: 'The scale cannot be opened: does another program have it?',
    },
    honest:
      'Tried on simulated devices and built bytes only: if yours tells something else, tell us the line or report.',
    settings: 'How a serial scale writes',
    settingsAbout: 'It stands in its booklet, under interface or printer. Kept on this tablet.',
    preset: 'Begin from',
    presets: {
      'number-and-unit': 'number and unit, one line after another',
      'state-first': 'the state first: ST settled, US moving',
      'mark-while-moving': 'a question mark while it moves',
      'older-serial': 'older scales: 2 400 baud, 7 bits, even parity',
    },
    baudRate: 'Baud rate',
    dataBits: 'Data bits',
    parity: 'Parity',
    parities: { none: 'none', even: 'even', odd: 'odd' },
    stopBits: 'Stop bits',
    numberFrom: 'The number begins at character',
    numberFromHint: 'Counted from 1. Left empty: the first number in the line.',
    numberLength: 'and has so many characters',
    unit: 'Unit',
    stableMark: 'Stands in a settled line',
    movingMark: 'Stands in a moving line',
    settlesBy: 'Settled is',
    settles: { mark: 'what its line says', equal: 'three equal lines one after the other' },
    save: 'Keep it on this tablet',
    serialName: 'The scale at the serial port',
    saved: 'Kept on this tablet.',
    badNumber: 'One of these is no number that a scale can have.',
    tryLine: 'Try a line',
    tryLineHint: 'Copy one from the booklet: what is read from it stands below.',
    readAs: (grams: string, isSettled: boolean) => `Read as ${grams}, ${isSettled ? 'settled' : 'moving'}.`,
  },
  ways: {
    leftOut: (scale: string) => `${scale} did not pass its check: nothing is planned on it.`,
    toCheck: 'Check it',
    small: (count: number) =>
      count === 1
        ? 'No scale here weighs one addition well enough at once.'
        : `No scale here weighs ${sayDecimal(count)} additions well enough at once.`,
    smallest: (grams: string, tins: string, isInParts: boolean) =>
      `The smallest batch that these scales can make properly: ${grams}${tins === '' ? '' : ` (${tins})`}${isInParts ? ', with its large additions weighed in parts' : ''}.`,
    noSmallest: 'There is no batch that the scales here can make properly.',
    what: 'What may be done',
  },
  blend: {
    write: 'Write this blend down',
    about:
      'It becomes a base of its own, in these proportions, as a trial: look at it, then make it, and put it into the formula in place of its scents.',
    name: 'Name',
    nameFor: (formula: string) => `${formula}: scents`,
    code: 'Code',
    codeHint: 'Two to four letters for batch numbers, such as SC.',
    stage: 'Mix',
    note: (formula: string) => `The scents of ${formula}, mixed ahead.`,
  },
  bench: {
    held: (planned: string, other: string | null) =>
      other === null
        ? `${planned} did not pass its check, and no other scale here holds this: let it pass first.`
        : `${planned} did not pass its check: weigh this on ${other}.`,
  },
} as const;
