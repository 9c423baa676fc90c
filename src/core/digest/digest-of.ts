import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from './canonical-json.ts';

/** Of a text that is canonical already. */
export const digestOfText = (canonical: string): string => bytesToHex(sha256(utf8ToBytes(canonical)));

/** SHA-256 (FIPS 180-4) of the canonical text, in hexadecimal: short, so that it can be kept and compared. The same on the server and in a browser. */
export const digestOf = (value: unknown): string => digestOfText(canonicalJson(value));
