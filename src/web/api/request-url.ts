import { type RouteName, routes } from '../../contract/index.ts';

export interface Address {
  readonly params?: Readonly<Record<string, string>> | undefined;
  readonly query?: unknown;
}

/** The address of a route with its `:id` filled in and its query behind it. */
export function requestUrl(name: RouteName, { params = {}, query }: Address = {}): string {
  const path = routes[name].path.replace(/:(\w+)/g, (_, key: string) => {
    const value = params[key];
    if (value === undefined) throw new Error(`${name} needs the path parameter ${key}`);
    return encodeURIComponent(value);
  });
  const search = new URLSearchParams();
  for (const [key, value] of Object.entries((query ?? {}) as Record<string, unknown>)) {
    if (value !== undefined) search.set(key, String(value));
  }
  const asked = search.toString();
  return asked === '' ? path : `${path}?${asked}`;
}
