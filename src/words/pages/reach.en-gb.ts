import { sayDecimal } from '../say-figure.ts';

/** Tablets and phones: on the workshop's page, on the pairing page, and where somebody says who works. */
export const reachWords = {
  title: 'Tablets and phones',
  off: 'Nobody reaches the workshop over a network. Only this computer is answered.',
  turnOn: 'Let tablets and phones in',
  turnOnHint:
    'Over the workshop’s own network, encrypted, and only those that you pair. The computer’s firewall may ask once: say yes for private networks.',
  on: 'Devices that are paired reach the workshop.',
  turnOff: 'Let nobody in any more',
  turnedOn: 'Tablets and phones may come in.',
  turnedOff: 'Nobody is let in any more.',
  noAddress:
    'It is on, but this computer has no address on a private network yet. Is its Wi-Fi on? Once it is, the address stands here within a minute, and a device can be paired.',
  ways: 'Reached at',
  wayIn: 'Address for the code',
  byNumber: 'by number',
  byName: 'by name, where the device knows such names',
  trouble: 'The network is not open',
  codeAlt: (url: string) => `Square code that leads to ${url}`,
  fingerprint: 'Fingerprint of the certificate (SHA-256)',
  fingerprintHint:
    'Before a device trusts the certificate, compare this with what it shows. The certificate was made on this computer; it is good for your own network and nothing else.',
  authorityUntil: 'It holds until',
  fetch: 'Fetch the certificate as a file',
  more: 'Certificate',
  pair: 'Pair a device',
  pairing: {
    title: 'Pair a device',
    how: 'On the tablet or phone, on the same Wi-Fi:',
    first:
      'The first time, fetch the certificate and trust it. Open this address in its browser; it answers only while the code below is valid:',
    noHint:
      'The first time, bring it the certificate as a file, by cable or stick, and trust it. The guide is on the device’s page.',
    next: 'Then hold its camera at this square, or open the address and type the code:',
    code: 'Code',
    until: (time: string) => `Valid until ${time}, for one device.`,
    triesLeft: (count: number) =>
      `${count === 1 ? 'One more wrong code ends it.' : `${sayDecimal(count)} more wrong codes end it.`}`,
    close: 'Make the code void',
    closed: 'The code is void.',
  },
  devices: {
    title: 'Paired',
    none: 'No device is paired yet.',
    seen: 'last seen',
    never: 'not seen since it was paired',
    unlocked: (names: string) => `Unlocked: ${names}`,
    nobody: 'Nobody is unlocked there.',
    rename: 'Rename',
    renameTitle: 'Another name for the device',
    name: 'Name of the device',
    renamed: 'The device has its new name.',
    drop: 'Drop',
    dropTitle: (name: string) => `Drop ${name}?`,
    dropSays:
      'It is refused from its next request on, and has to be paired again to come back. What it entered stays; what it has not sent yet stays on it.',
    dropIt: 'Drop it',
    dropped: (name: string) => `${name} is dropped.`,
  },
  pin: {
    has: 'has a PIN',
    none: 'no PIN: cannot sign on tablets',
    set: 'Set a PIN',
    change: 'Change the PIN',
    titleOf: (name: string) => `PIN of ${name}`,
    about:
      'Four to eight digits, asked for on tablets and phones only. Do not take the one of your bank card. Every device asks for the new one.',
    field: 'PIN',
    again: 'The PIN once more',
    differ: 'The two are not the same.',
    save: 'Set it',
    saved: (name: string) => `${name} has a new PIN.`,
    takeAway: 'Take the PIN away',
    takenAway: (name: string) => `${name} has no PIN any more.`,
    old: 'The PIN until now',
    new: 'The new PIN',
    changeOwn: 'Change my PIN',
    changed: 'Your PIN is changed. Other devices ask for it again.',
  },
  unlock: {
    title: (name: string) => `${name}: type your PIN`,
    field: 'PIN',
    go: 'That is me',
    back: 'Somebody else',
    noPin: 'no PIN yet',
    noPinMend: 'Who has no PIN cannot sign here. Set one on the workshop’s computer, under Workshop, People.',
    lock: (name: string) => `Lock for ${name}`,
    locked: (name: string) => `${name} is locked on this device.`,
    silent:
      'The workshop’s computer does not answer, so no PIN can be checked. Only who is unlocked here already can be chosen.',
  },
  page: {
    title: 'Pair this device',
    says: 'This device is not paired with the workshop yet.',
    lead: 'On the workshop’s computer open Workshop and press “Pair a device”. Type here the code that it shows.',
    code: 'Code, eight digits',
    name: 'Name for this device',
    nameHint: 'So that entries say where they were made, such as “Bench tablet”.',
    go: 'Pair it',
    done: (name: string) => `This device is paired as ${name}.`,
    already: (name: string) => `This device is paired as ${name}`,
    alreadySays: 'The owner can rename or drop it on the workshop’s computer.',
    own: 'This is the workshop’s own computer',
    ownSays: 'Nothing has to be paired here. Open this address on the tablet or phone instead.',
    home: 'To this morning',
    waiting: (count: number) =>
      `${count === 1 ? 'One entry lies' : `${sayDecimal(count)} entries lie`} on this device and ${count === 1 ? 'goes' : 'go'} once it is paired again.`,
    warned:
      'Did the browser warn that this page is not safe? Then the device does not trust the workshop’s computer yet: do that first. Until then no code should be typed, for nobody knows who reads it.',
  },
  here: {
    title: 'At the workshop’s computer',
    says: 'Safe copies, check-up, files to take out, names and addresses, pairing and PINs of others are found on the Workshop page there.',
    device: (name: string) =>
      `This device is called ${name}. The owner can rename it on the workshop’s computer.`,
  },
} as const;
