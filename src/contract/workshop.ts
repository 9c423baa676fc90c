import { z } from 'zod';
import * as f from './fields.ts';
import { route } from './route.ts';
import { scaleProof } from './scale-proof.ts';

export const workshopDetails = z.strictObject({
  name: f.name,
  /** Names and addresses that stand on labels: the responsible person for Great Britain, and for the EU and Northern Ireland. */
  responsibleGb: z.strictObject({ name: f.text, address: f.text }),
  responsibleEu: z.strictObject({ name: f.text, address: f.text }),
  /** For the United States; `contact` is how a buyer reports harm: a telephone number there, an e-mail or web address. */
  responsibleUs: z
    .strictObject({ name: f.text, address: f.text, contact: f.text })
    .default({ name: '', address: '', contact: '' }),
  /** The maker's own domain, which codes on labels lead to; '' where there is none. */
  codeDomain: z.string().trim().max(200).default(''),
  currency: z.string().regex(/^[A-Z]{3}$/),
  country: z.string().regex(/^[A-Z]{2}$/),
  /** IANA name: what day it is at the bench. */
  timeZone: z.string().min(1).max(60),
  backupFolder: z.string().max(1000),
  /** The net mass a bowl holds at most; '' where nobody has said. */
  bowlGrams: z.union([z.literal(''), f.gramsAboveZero]),
  /** What the bowl takes in millilitres while the whisk turns; '' where nobody has said. */
  bowlMl: z.union([z.literal(''), f.millilitresAboveZero]).default(''),
});

export const workshop = z.object({
  /** `empty` until the first start chose between the example and the own workshop. */
  state: z.enum(['empty', 'ready']),
  isExample: z.boolean(),
  /** Where its file stands on the workshop's computer. */
  folder: z.string(),
  /** Workshop's local date and time now. */
  today: f.date,
  now: f.instant,
  details: workshopDetails.nullable(),
  version: z.number(),
  people: z.array(z.object({ id: f.id, name: z.string(), isActive: z.boolean(), version: z.number() })),
  scales: z.array(
    z.object({
      id: f.id,
      name: z.string(),
      capacityGrams: z.string(),
      readabilityGrams: z.string(),
      repeatabilityGrams: z.string().nullable(),
      accuracyClass: z.enum(['I', 'II', 'III', 'IIII']).nullable(),
      verificationIntervalGrams: z.string().nullable(),
      /** The weight that it is checked with, and how far off that may be. */
      checkWeightGrams: z.string().nullable(),
      checkToleranceGrams: z.string().nullable(),
      ...scaleProof,
      version: z.number(),
    }),
  ),
  places: z.array(
    z.object({ id: f.id, name: z.string(), kind: z.enum(['shelf', 'stall', 'shop', 'retained']) }),
  ),
  lastBackup: z.object({ at: f.instant, file: z.string() }).nullable(),
});

export const scaleInput = z.strictObject({
  id: f.id.optional(),
  version: f.version.optional(),
  name: f.name,
  capacityGrams: f.gramsAboveZero,
  readabilityGrams: f.gramsAboveZero,
  repeatabilityGrams: f.grams.nullable(),
  accuracyClass: z.enum(['I', 'II', 'III', 'IIII']).nullable(),
  verificationIntervalGrams: f.gramsAboveZero.nullable(),
  /** Left out: as it was. */
  checkWeightGrams: f.gramsAboveZero.nullable().optional(),
  checkToleranceGrams: f.grams.nullable().optional(),
});

export const firstStep = z.enum([
  'people',
  'place',
  'scale',
  'address',
  'material',
  'count',
  'formula',
  'report',
  'product',
  'order',
]);
export type FirstStep = z.output<typeof firstStep>;

export const workshopRoutes = {
  getWorkshop: route({
    method: 'GET',
    path: '/api/workshop',
    summary: 'The workshop, its people, scales and places',
    output: workshop,
  }),
  beginWorkshop: route({
    method: 'POST',
    path: '/api/workshop/begin',
    summary: 'First start: open the example workshop or start your own',
    input: z.discriminatedUnion('with', [
      z.strictObject({ with: z.literal('example') }),
      z.strictObject({ with: z.literal('own'), name: f.name, firstPerson: f.name }),
    ]),
    output: workshop,
    openTo: 'own-computer',
  }),
  getFirstSteps: route({
    method: 'GET',
    path: '/api/first-steps',
    summary:
      'What a new workshop needs before its first batch, in the order that works, and what of it is there',
    output: z.array(z.object({ step: firstStep, isDone: z.boolean() })),
  }),
  changeWorkshop: route({
    method: 'PUT',
    path: '/api/workshop',
    summary: 'Change names, addresses, backup folder',
    input: z.strictObject({ stamp: f.stamp, version: f.version, details: workshopDetails }),
    output: workshop,
    openTo: 'own-computer',
  }),
  savePerson: route({
    method: 'POST',
    path: '/api/people',
    summary: 'Add a person, or rename one (give id and version)',
    input: z.strictObject({
      stamp: f.stamp,
      id: f.id.optional(),
      version: f.version.optional(),
      name: f.name,
      isActive: z.boolean().default(true),
    }),
    output: f.createdThing,
  }),
  saveScale: route({
    method: 'POST',
    path: '/api/scales',
    summary: 'Add or change a scale',
    input: z.strictObject({ stamp: f.stamp, scale: scaleInput }),
    output: f.createdThing,
  }),
  savePlace: route({
    method: 'POST',
    path: '/api/places',
    summary: 'Add a place where stock stands',
    input: z.strictObject({ stamp: f.stamp, name: f.name, kind: z.enum(['shelf', 'stall', 'shop']) }),
    output: f.createdThing,
  }),
  backUp: route({
    method: 'POST',
    path: '/api/backup',
    summary: 'Write a backup into the chosen folder now',
    input: z.strictObject({ folder: z.string().max(1000).optional() }),
    output: z.object({ file: z.string(), bytes: z.number(), at: f.instant }),
    openTo: 'own-computer',
  }),
  checkUp: route({
    method: 'GET',
    path: '/api/check-up',
    summary: 'Check the file: integrity, hash chain, balances, foreign keys',
    output: z.object({
      isSound: z.boolean(),
      findings: z.array(z.object({ what: z.string(), isSound: z.boolean(), detail: z.string() })),
    }),
    openTo: 'own-computer',
  }),
  exportJson: route({
    method: 'GET',
    path: '/api/export.json',
    summary: 'Everything, as one JSON document',
    output: z.record(z.string(), z.unknown()),
    openTo: 'own-computer',
  }),
  exportCsv: route({
    method: 'GET',
    path: '/api/export.zip',
    summary: 'Everything, as one CSV file a table',
    output: z.unknown(),
    media: 'application/zip',
    openTo: 'own-computer',
  }),
};
