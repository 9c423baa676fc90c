import { useParams } from '@tanstack/react-router';

/** A part of the page's own address, such as `id`. A page without it is a mistake of ours. */
export function useParam(name: string): string {
  const params = useParams({ strict: false }) as Readonly<Record<string, string | undefined>>;
  const value = params[name];
  if (value === undefined) throw new Error(`the address has no ${name}`);
  return value;
}
