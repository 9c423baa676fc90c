export { saying } from '../contract/index.ts';
