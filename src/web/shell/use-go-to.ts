import { useNavigate } from '@tanstack/react-router';

/** Leads on to another page after something was done. */
export function useGoTo(): (to: string) => void {
  const navigate = useNavigate();
  return (to) => void navigate({ to });
}
