import { z } from 'zod';
import * as f from './fields.ts';
import { route } from './route.ts';

/** Digits, so that a key pad is enough. Fewer than four could be guessed within the tries that are allowed. */
export const pin = z.string().regex(/^\d{4,8}$/);
/** Eight digits, as they stand on the workshop's page; a gap in the middle does no harm. */
export const pairingCode = z
  .string()
  .transform((text) => text.replace(/[\s-]/g, ''))
  .pipe(z.string().regex(/^\d{8}$/));
export const deviceName = z.string().trim().min(1).max(60);

/** A square code to hold a camera at: one path in a box of `size` by `size`, quiet border included. */
export const squareCode = z.object({ size: z.number(), path: z.string() });

/** By what a device reaches the workshop. */
const wayIn = z.object({
  address: z.string(),
  url: z.string(),
  kind: z.enum(['number', 'name']),
  code: squareCode,
});

export const device = z.object({
  id: f.id,
  name: z.string(),
  pairedAt: f.instant,
  /** To the minute; null where it was never seen after the pairing. */
  lastSeen: f.instant.nullable(),
  /** Who has entered their PIN there and not locked it since. */
  unlocked: z.array(f.namedThing),
  version: z.number(),
});

export const pairing = z.object({
  /** `48219034` */
  code: z.string(),
  until: f.instant,
  triesLeft: z.number(),
  /** Address and code in one, for each way in. */
  ways: z.array(wayIn),
  /** Where a device without any trust yet fetches the certificate, over plain http; null where that port was taken. */
  hint: z.string().nullable(),
});

export const reach = z.object({
  /** null: this program does not answer a network, such as a command that is gone again. */
  network: z
    .object({
      isOn: z.boolean(),
      /** Why it is not on although it was asked for, such as a port that is taken. */
      trouble: z.string().nullable(),
      port: z.number().nullable(),
      ways: z.array(wayIn),
      /** SHA-256 of the authority's certificate, in pairs; null until it was made. */
      fingerprint: z.string().nullable(),
      authorityUntil: f.instant.nullable(),
      pairing: pairing.nullable(),
    })
    .nullable(),
  devices: z.array(device),
});

/** What a page has to know before anything else: through which door it came, and who may be chosen there. */
export const door = z.object({
  door: z.enum(['own-computer', 'network']),
  /** The device that asks, where it is paired. */
  device: f.namedThing.nullable(),
  isPairingOpen: z.boolean(),
  /** Nobody is named to a device that is not paired. */
  people: z.array(z.object({ id: f.id, name: z.string(), hasPin: z.boolean(), isUnlocked: z.boolean() })),
});

export const reachRoutes = {
  getDoor: route({
    method: 'GET',
    path: '/api/reach/door',
    summary: 'Through which door a page came: this computer, a paired device, or neither',
    output: door,
    openTo: 'anyone',
  }),
  getAuthority: route({
    method: 'GET',
    path: '/api/reach/authority.crt',
    summary: 'The certificate of the workshop’s own authority, to be trusted by its tablets and phones',
    output: z.unknown(),
    media: 'application/x-x509-ca-cert',
    openTo: 'anyone',
  }),
  pairDevice: route({
    method: 'POST',
    path: '/api/reach/pair',
    summary: 'Pair this device by the code on the workshop’s page; the answer sets its cookie',
    input: z.strictObject({ code: pairingCode, name: deviceName }),
    output: f.namedThing,
    openTo: 'anyone',
  }),
  getReach: route({
    method: 'GET',
    path: '/api/reach',
    summary: 'Whether tablets and phones reach the workshop, at which addresses, and which are paired',
    output: reach,
    openTo: 'own-computer',
  }),
  switchReach: route({
    method: 'POST',
    path: '/api/reach/switch',
    summary: 'Let tablets and phones reach the workshop over its network, or no longer',
    input: z.strictObject({
      stamp: f.stamp,
      isOn: z.boolean(),
      /** Another port than the one that devices know; left out it stays. */
      port: z.number().int().min(1024).max(65_535).optional(),
    }),
    output: reach,
    openTo: 'own-computer',
  }),
  openPairing: route({
    method: 'POST',
    path: '/api/reach/pairing',
    summary: 'Make a code that pairs one device within ten minutes',
    input: z.strictObject({ stamp: f.stamp }),
    output: reach,
    openTo: 'own-computer',
  }),
  closePairing: route({
    method: 'POST',
    path: '/api/reach/pairing/close',
    summary: 'Make the code void before its time',
    input: z.strictObject({ stamp: f.stamp }),
    output: reach,
    openTo: 'own-computer',
  }),
  renameDevice: route({
    method: 'PUT',
    path: '/api/reach/devices/:id',
    summary: 'Give a paired device another name',
    input: z.strictObject({ stamp: f.stamp, version: f.version, name: deviceName }),
    output: f.createdThing,
    openTo: 'own-computer',
  }),
  dropDevice: route({
    method: 'POST',
    path: '/api/reach/devices/:id/drop',
    summary: 'Drop a paired device: it is refused from its next request on',
    input: z.strictObject({ stamp: f.stamp, version: f.version }),
    output: f.createdThing,
    openTo: 'own-computer',
  }),
  setPin: route({
    method: 'POST',
    path: '/api/people/:id/pin',
    summary: 'Set a person’s PIN, or take it away; every device asks for the new one',
    input: z.strictObject({ stamp: f.stamp, pin: pin.nullable() }),
    output: f.createdThing,
    openTo: 'own-computer',
  }),
  changeOwnPin: route({
    method: 'POST',
    path: '/api/reach/pin',
    summary: 'On a paired device: change one’s own PIN by the old one',
    input: z.strictObject({ stamp: f.stamp, oldPin: pin, pin }),
    output: f.createdThing,
  }),
  unlockPerson: route({
    method: 'POST',
    path: '/api/reach/unlock',
    summary: 'On a paired device: say who works there, by their PIN',
    input: z.strictObject({ stamp: f.stamp, pin }),
    output: f.createdThing,
  }),
  lockPerson: route({
    method: 'POST',
    path: '/api/reach/lock',
    summary: 'On a paired device: from now on the person’s PIN is asked for again',
    input: z.strictObject({ stamp: f.stamp }),
    output: f.createdThing,
  }),
};
