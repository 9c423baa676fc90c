import { z } from 'zod';
import * as f from './fields.ts';
import { batchView } from './making.ts';
import { route } from './route.ts';
import { whipRoundInput } from './steps.ts';

/** A photograph of 400 kB, in base64: the tablet shrinks it so far before it is sent. */
const LARGEST_BASE64 = 700_000;

export const stepRoutes = {
  beginStep: route({
    method: 'POST',
    path: '/api/batches/:id/steps/begun',
    summary: 'A step has begun: every tablet sees its time run',
    input: z.strictObject({
      stamp: f.stamp,
      position: z.number().int().min(0),
      load: z.number().int().min(1).max(99).default(1),
      /** Of whipping; of what melts, 2 begins the time at which it is held hot. */
      round: z.number().int().min(1).max(99).default(1),
      /** How long its timer runs, where the method does not say. */
      minutes: f.decimal.nullable().default(null),
    }),
    output: batchView,
  }),
  recordRound: route({
    method: 'POST',
    path: '/api/batches/:id/rounds',
    summary: 'A round of whipping: what it looked like, and whether it goes on',
    input: whipRoundInput.extend({
      stamp: f.stamp,
      position: z.number().int().min(0),
      /** Questions that were asked about its cups, and answered with "it is so". */
      sure: z.array(f.name).max(10).default([]),
    }),
    output: batchView,
  }),
  addStepPhoto: route({
    method: 'POST',
    path: '/api/batches/:id/photos',
    summary: 'A photograph (JPEG or PNG) of a step; it stays with the record',
    input: z.strictObject({
      stamp: f.stamp,
      position: z.number().int().min(0),
      caption: f.text,
      base64: z.base64().max(LARGEST_BASE64),
    }),
    output: batchView,
  }),
  strikeStepPhoto: route({
    method: 'POST',
    path: '/api/batches/:id/photos/strikes',
    summary: 'Strike a photograph: its picture is deleted, that there was one and why it went stays',
    input: z.strictObject({ stamp: f.stamp, entryId: f.id, reason: f.name }),
    output: batchView,
  }),
};
