export { type AppWish, createApp } from './create-app.ts';
export { type Live, makeLive } from './live.ts';
export { type Log, makeLog } from './log.ts';
export { makeNetwork, type NetworkWish } from './make-network.ts';
export { type Listening, serve } from './serve.ts';
