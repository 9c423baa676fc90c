export { canonicalJson } from './canonical-json.ts';
export { digestOf } from './digest-of.ts';
