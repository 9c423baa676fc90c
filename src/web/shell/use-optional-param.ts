import { useParams } from '@tanstack/react-router';

/** A part of the page's address that may be left out. */
export function useOptionalParam(name: string): string | null {
  const params = useParams({ strict: false }) as Readonly<Record<string, string | undefined>>;
  return params[name] ?? null;
}
