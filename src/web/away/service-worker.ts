import { queryClient } from '../api/query-client.ts';
import { door } from './door.ts';
import { forgetSent } from './sent-entries.ts';

/** What the service worker keeps of the workshop's answers begins with one of these. */
const KEPT = ['gramwright-known-', 'gramwright-pictures-'];

/** A device that was dropped shows nothing of the workshop any more; what was entered on it stays until it is sent. */
async function forgetKnown(): Promise<void> {
  forgetSent();
  const names = await caches.keys();
  const kept = names.filter((name) => KEPT.some((start) => name.startsWith(start)));
  await Promise.all(kept.map((name) => caches.delete(name)));
}

/**
 * The pages come up without the workshop, and the bench shows what it was last told. A new version that lies ready is
 * taken with this load: nothing is typed yet, and what was entered lies in the outbox.
 */
export async function startServiceWorker(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  door.watch(() => door.read() === 'device-not-paired' && void forgetKnown());
  navigator.serviceWorker.addEventListener('controllerchange', () => void queryClient.invalidateQueries());
  try {
    const registered = await navigator.serviceWorker.register('/service-worker.js');
    registered.waiting?.postMessage('take over');
  } catch (error) {
    // Without it the pages need the workshop, as they did before: the bench says so when it is silent.
    console.warn('the service worker could not be registered', error);
  }
}
