import { z } from 'zod';

/** The content security policy forbids code made from text; zod compiles its schemas unless told not to. Import first. */
z.config({ jitless: true });
