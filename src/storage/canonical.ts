import { createHash } from 'node:crypto';

export { canonicalJson } from '../core/digest/index.ts';

export const sha256 = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');
