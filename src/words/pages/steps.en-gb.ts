import { sayDecimal } from '../say-figure.ts';

const minutesAs = (minutes: string): string => (minutes === '1' ? '1 minute' : `${minutes} minutes`);

/** Steps at the bench, one kind a screen: their timers, cautions, rounds of whipping, cups and photographs. */
export const stepWords = {
  recordTitle: 'Rounds and photographs',
  begin: 'Begin',
  beginAfter: 'Read, understood: begin',
  begunBy: (by: string) => `Begun by ${by}`,
  begunWrongly: 'Begun by mistake?',
  strikeBegun: 'Strike the beginning? It stays readable, and the step can begin anew.',
  strikeDone: 'Strike the step? It stays readable, and can be entered again.',
  strikeRound: 'Strike this round? It stays readable, and can be entered again.',
  strikeWhy: 'Why it is struck',
  notBegun: 'Not begun yet. Nothing runs until somebody taps.',
  onTablet: 'kept on this tablet, goes to the workshop when it answers',
  doneWithout: 'It was done without its timer',
  load: 'Bowl load',
  round: 'Round',

  timer: {
    title: 'Timers that run',
    left: 'still to go',
    over: 'Time is up',
    overSince: (since: string) => `over by ${since}`,
    goes: (left: string) => `${left} to go`,
    elapsed: 'since it began',
    sound: 'Sound is off: tap to let it ring',
    soundOn: 'Sound is on',
    noSound: 'This tablet gives no sound',
    show: (what: string) => `Show ${what}`,
    spoken: (word: string, what: string) => `${word}: ${what}.`,
    from: 'earliest',
    to: 'latest',
    waits: (until: string) => `firm ${until} at the earliest`,
    mayBe: 'may be firm: feel it',
    shouldBe: 'should be firm by now',
    hours: (hours: string) => `${hours} h`,
  },

  melt: {
    ask: 'How hot is it?',
    holds: (minutes: string) => `Hot enough? Hold it there for ${minutesAs(minutes)}.`,
    beginHold: (minutes: string) => `It is hot: hold it ${minutesAs(minutes)}`,
    begin: 'The heat is on: begin',
    reached: 'Hottest reading while it melted',
  },
  hold: {
    begin: 'Begin to hold it',
    ask: 'Temperature at the end',
  },
  cool: {
    begin: 'Take it off the heat: begin to cool',
    ask: 'How warm is it now?',
    until: 'Cool down to',
    since: 'cooling since',
  },
  cover: { begin: 'It is covered: begin' },
  mix: { begin: 'Begin to mix', smooth: 'Until it is smooth, with no lumps.' },
  set: {
    begin: 'It stands still and covered: begin',
    firm: 'It is firm',
    handOn: 'It stands covered: go on',
    handOnSays:
      'A base sets on its shelf: making goes on without it, and a person says on its lot when it is firm.',
    hours: (least: string, most: string) =>
      `Firm after ${least} ${Number(least) === 1 ? 'hour' : 'hours'} at the earliest, ${most} at the latest.`,
    firmUntimed: 'It is firm: it stood without its timer',
    noRange: 'The method gives no hours: a person says when it is firm.',
    feel: 'Press it in the middle: firm, no shine of liquid fat, no dent that flows back.',
  },
  weigh: {
    gross: 'On the scale',
    tare: 'Bowl or pan, empty',
    tareHint: 'Left empty where the scale was set to nought with it.',
    expected: (grams: string) => `${grams} should be in it by what was weighed in.`,
    net: (grams: string) => `${grams} net`,
    loss: (grams: string, percent: string) => `${grams} stayed behind (${percent} %).`,
    gain: (grams: string) => `${grams} more than went in: is its own weight taken off?`,
  },
  remember: 'Remark',
  addRemark: 'Add a remark',
  wantedHeat: 'Wanted',
  wantedTime: 'For',
  minutesTook: 'Minutes it took',
  byTimer: (minutes: string) => `${minutesAs(minutes)} by the timer`,
  wanted: (minutes: string) => `${minutesAs(minutes)} wanted`,

  whip: {
    loadOf: (load: number, all: number) =>
      all > 1 ? `Bowl load ${sayDecimal(load)} of ${sayDecimal(all)}` : `Bowl load ${sayDecimal(load)}`,
    roundOf: (round: number, all: number | null) =>
      all === null || round > all
        ? `Round ${sayDecimal(round)}`
        : `Round ${sayDecimal(round)} of ${sayDecimal(all)}`,
    length: 'Minutes of a round',
    lengthSays: (minutes: string) => `${minutesAs(minutes)} a round`,
    change: 'Another length',
    shorter: 'Half a minute less',
    longer: 'Half a minute more',
    openEnd: 'open',
    wentOn: 'went on',
    stopped: 'stopped',
    strikeLast: 'Strike the last round',
    beginRound: (round: number) => `Begin round ${sayDecimal(round)}`,
    stopLook: 'Stop the machine and look',
    look: 'Look, scrape the bowl, go on or stop',
    unplug: 'Machine off and whisk still before a hand or a scraper goes in.',
    looked: 'What does it look like?',
    goOn: 'Go on: another round',
    stop: 'Stop: this is it',
    nextLoad: 'Next bowl load',
    allWhipped: (next: string) => `All is whipped. ${next}`,
    rounds: 'Rounds so far',
    noRounds: 'No round yet.',
    ran: (minutes: string) => `${minutes} min`,
    whippedFor: (minutes: string) => `${minutesAs(minutes)} of whipping in all`,
    typed: 'Minutes it ran',
    lookFirst: 'First tap what it looks like.',
  },
  looks: {
    loose: 'Loose, runs off',
    'soft-peaks': 'Soft peaks',
    'firm-peaks': 'Firm peaks',
    stiff: 'Stiff, breaks off',
    grainy: 'Grainy',
    melting: 'Warm, melting',
  },
  lookSays: {
    loose: 'It takes more air yet.',
    'soft-peaks': 'Near: a cup now tells how near.',
    'firm-peaks': 'Usually the place to stop.',
    stiff: 'Stop: more whipping breaks it.',
    grainy:
      'Cold lumps of fat, or fats that crystallised apart. Whipping on does not smooth it: melt it again, cool it faster, stir while it cools.',
    melting: 'The machine warms it. Cool the bowl to where it holds a dent, then go on.',
  },
  cup: {
    title: 'A cup, or a first tin, full and levelled',
    add: 'Weigh a cup or a tin',
    another: 'Weigh another',
    gross: 'Full',
    tare: 'Empty',
    holds: 'Holds',
    before: 'Held before whipping',
    beforeHint: 'The same cup of it unwhipped, its own weight taken off.',
    takeOwn: (ml: string, tare: string) => `My cup: ${ml} ml, ${tare} empty`,
    takeTin: (product: string, ml: string) => `Tin of ${product}: ${ml} ml`,
    askTitle: 'Is that right?',
    sure: 'It is so: keep it',
    keep: 'Count this cup',
    takeLast: (tin: string, density: string) =>
      `Take the ${tin === '' ? 'cup' : 'tin'} of the last round: ${density} g/ml`,
    ofCup: (density: string) => `a cup: ${density} g in a millilitre`,
    ofTin: (product: string, density: string) => `tin of ${product}: ${density} g in a millilitre`,
    takeOff: 'Take this one off',
  },
  air: {
    title: 'Air',
    more: 'More air',
    stop: 'Stop here',
    'too-much': 'Too much air',
    needsCup: 'A full cup tells whether it takes more air.',
    takes: (product: string, takes: string, declared: string) =>
      `A tin of ${product} takes ${takes} now; its label states ${declared}.`,
    full: (aim: string, percent: string) => `Filled to ${aim} it is ${percent} % full.`,
    above: (percent: string) => `more than ${percent}`,
    below: (percent: string) => `less than ${percent}`,
    shortOfAim: (aim: string) => `The label goes in, the ${aim} that are aimed at do not.`,
    next: (grams: string) => `After another round like the last it would take about ${grams}.`,
    stopAt: (gross: string) => `Stop when the same cup shows ${gross} on the scale.`,
    grown: (percent: string) => `Grown by ${percent} %.`,
    largest: (percent: string) => `At ${percent} % the label is just reached.`,
    fills: (count: number, product: string, left: string) =>
      `${sayDecimal(count)} tins of ${product}, ${left} left over.`,
    fillsPlanned: (count: number, planned: number, product: string) =>
      count >= planned
        ? `Enough for the ${sayDecimal(planned)} tins of ${product} that are planned.`
        : `Only ${sayDecimal(count)} of the ${sayDecimal(planned)} tins of ${product} that are planned.`,
    chance: (percent: string, tins: number, aim: string) =>
      tins === 1
        ? `Chance that the tin reaches its label at once, filled to ${aim}: ${percent} %.`
        : `Chance that all ${sayDecimal(tins)} tins reach the label at once, filled to ${aim}: ${percent} %.`,
    chanceUnknown:
      'The chance that all reach the label is not known: no earlier run of this product, and fewer than two cups or first tins of this bowl.',
    chanceNoSpread:
      'The chance that all reach the label is not known: what was weighed does not differ at all, which is finer than the scale shows.',
    working: 'How this was worked out',
    model: (from: string, s: string, f: number) =>
      `Normal model with Student’s allowance for few data: spread ${s} g from ${from}, ${sayDecimal(f)} degrees of freedom.`,
    fromRuns: (runs: number, tins: number) =>
      `${sayDecimal(tins)} tins of ${runs === 1 ? 'one earlier run' : `${sayDecimal(runs)} earlier runs`} of this product`,
    fromNow: (count: number) => `${sayDecimal(count)} cups or tins of this bowl`,
    fromBoth: (runs: string, now: string) => `${runs} and ${now}`,
    mean: (grams: string, count: number) =>
      `Expected in a tin: ${grams}, the aim or what it takes, whichever is less; known from ${count === 1 ? 'one cup' : `${sayDecimal(count)} cups`}.`,
    limits:
      'It holds where tins scatter normally and alike and nothing drifts: not for a bowl that warms up, nor for tins filled by another hand. Earlier runs count their spread within a run, not how runs differ.',
    density: (density: string, cups: number) =>
      `Density ${density} g/ml, mean of ${cups === 1 ? 'one cup' : `${sayDecimal(cups)} cups`}. A tin takes brim volume less the room under the lid, times density.`,
    rule: 'Stop: the tin takes no more than 5 % above its aim, or another round like the last would leave less than the aim (common practice, no source). Growth after University of Guelph, overrun calculations.',
    mend: 'Air cannot be taken out again by magic. What helps, in this order:',
    mends: [
      'Let it rest at room warmth and fold it by hand with a spatula: large bubbles go, some air with them. Then weigh a cup again.',
      'Melt a part of it (a third is common), cool it to where it just pours, fold it in, and weigh a cup again.',
      'Take a larger tin, with its own label and its own check.',
      'Tap the tins while filling and top them up after an hour, when the butter has settled.',
    ],
    mendSource:
      'Common practice, no source. What is melted again counts as a step done differently: write it down.',
  },
  loads: {
    title: 'Bowl loads',
    one: (grams: string) => `All ${grams} at once.`,
    many: (count: number) => `In ${sayDecimal(count)} loads:`,
    fills: (ml: string, bowl: string) => `Whipped, the largest fills ${ml} of the bowl’s ${bowl}.`,
    fillsOnly: (ml: string) => `Whipped, it fills about ${ml}.`,
    byMass: 'More would be too heavy for the bowl.',
    from: {
      earlier: (density: string, batches: number) =>
        `By cups of ${batches === 1 ? 'one earlier batch' : `${sayDecimal(batches)} earlier batches`}: ${density} g in a millilitre at the lightest.`,
      expected: (percent: string, density: string, isKnown: boolean) =>
        `By the method it grows by ${percent} %, from ${density} g in a millilitre ${isKnown ? 'as it was weighed' : 'as fats usually have (common practice, no source)'}.`,
    },
    unknown:
      'Nobody has said what it grows to: weigh a cup at the end, and the next batch knows. The method can say by how much it grows.',
    noBowl: 'What the bowl takes in millilitres is not known: say it on the page of the workshop.',
    nothing: 'Nothing lies in the bowl yet.',
  },
  photo: {
    title: 'Photographs',
    take: 'Take a photograph',
    look: 'Keep this photograph?',
    keep: 'Keep it',
    drop: 'Leave it out',
    rule: 'No people in it, no papers with names: it stays with the record for good.',
    strike: 'Take this photograph out',
    strikeSays:
      'The picture is deleted for good and printed no more; that there was one, who took it out and why, stays on record. Why?',
    strikeWhys: [
      'Somebody is seen on it',
      'It belongs to another step',
      'Names or papers are seen on it',
      'It shows nothing',
    ],
    caption: 'What it shows',
    shrinking: 'being made smaller',
    tooHeavy: 'It could not be made small enough to be kept: take it from farther off.',
    notReadable: 'This tablet cannot read that picture: take a JPEG or PNG.',
    large: (caption: string) => `Show large: ${caption}`,
    close: 'Close',
    by: (by: string) => `by ${by}`,
    waiting: 'waits on this tablet',
  },
  cautions: {
    title: 'Before you begin',
    more: 'More on this',
    source:
      'Common practice, no source. The rules of your house, of fire safety and of work safety where you are come first.',
    'hot-fat': {
      says: 'Hot fat burns deeper than water.',
      more: 'Long sleeves, closed shoes, handles turned in, nobody small or furry in the room. A burn: cool running water for twenty minutes, and help where it blisters.',
    },
    'not-alone': {
      says: 'Stay with it. Never leave heat alone.',
      more: 'If you must go, turn the heat off; the timer waits. Fat that smokes is far too hot: heat off, lid on. Burning fat: lid or fire blanket, heat off, never water.',
    },
    'water-bath': {
      says: 'Steam scalds, and a bath boils dry.',
      more: 'Water at a simmer, not at a boil; look at its level every ten minutes; lift the bowl away from you, and wipe it dry before you pour.',
    },
    'no-water': {
      says: 'Not a drop of water into hot fat: it spits.',
      more: 'Dry bowls, dry spoons, no lid that drips. A drop that stays in spoils a product without a preservative besides.',
    },
    'stays-hot': {
      says: 'It stays hot longer than it looks.',
      more: 'A pan of fat keeps its heat for half an hour and more. Put it where nobody reaches over it; say that it is hot.',
    },
    condensation: {
      says: 'Lid on loosely until it is lukewarm.',
      more: 'Under a tight lid steam turns to drops: water in a product without a preservative. A clean cloth keeps dust out meanwhile.',
    },
    'turning-whisk': {
      says: 'Sleeves, hair and spatula away from the whisk.',
      more: 'Machine off, and off at the plug, before a hand or a scraper goes into the bowl. Feel the motor: one that smells or is hot needs a rest.',
    },
    'dust-cloud': {
      says: 'Pour powder low and slowly.',
      more: 'Starch and clay in the air go into lungs, and near a flame they can flash: no flame beside them, a mask where it dusts.',
    },
  },
  print: {
    begun: (when: string, who: string) => `begun ${when}, ${who}`,
    round: (load: number, round: number) =>
      load === 1 ? `Round ${sayDecimal(round)}` : `Load ${sayDecimal(load)}, round ${sayDecimal(round)}`,
    rounds: 'Rounds of whipping',
    roundColumns: {
      round: 'Round',
      ran: 'Minutes',
      looked: 'Looked',
      cups: 'Cups (g/ml)',
      when: 'When',
      who: 'Who',
    },
    yields: 'What each stage left behind',
    yieldColumns: {
      stage: 'Stage',
      expected: 'Should be (g)',
      found: 'Was (g)',
      loss: 'Lost (g)',
      percent: 'Lost (%)',
    },
    photoOf: (step: string, caption: string, when: string, who: string) =>
      caption === step ? `${step}: ${when}, ${who}` : `${step}: ${caption}. ${when}, ${who}`,
    photos: 'Photographs',
    photosSource: 'Taken at the bench, as they were kept.',
  },
  yields: {
    title: 'What each stage left behind',
    soft: 'Each bar is what there was; the light part is what was lost since the weighing before.',
    expected: 'Should be',
    found: 'Was',
    loss: 'Lost',
    stage: 'Stage',
    made: 'What came out',
    filled: 'Filled into tins, sample and rest',
    barOf: (name: string, found: string, loss: string, percent: string) =>
      `${name}: ${found} there, ${loss} lost, ${percent} %`,
  },
};
