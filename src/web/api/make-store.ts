/** A value that pages watch: small enough for `useSyncExternalStore`. */
export interface Store<T> {
  readonly read: () => T;
  readonly write: (value: T) => void;
  readonly watch: (onChange: () => void) => () => void;
}

export function makeStore<T>(first: T): Store<T> {
  let now = first;
  const watchers = new Set<() => void>();
  return {
    read: () => now,
    write(value) {
      if (Object.is(now, value)) return;
      now = value;
      for (const tell of watchers) tell();
    },
    watch(onChange) {
      watchers.add(onChange);
      return () => watchers.delete(onChange);
    },
  };
}
