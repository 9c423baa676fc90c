export { canonicalJson } from './canonical-json.ts';
export { digestOf, digestOfText } from './digest-of.ts';
