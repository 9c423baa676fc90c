export { type RunWish, run } from './run.ts';
