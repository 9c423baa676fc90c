import type { Market } from '../contract/index.ts';

/** Every market that the tables know something of. */
export const EVERYWHERE: readonly Market[] = ['GB', 'NI', 'EU', 'US'];
