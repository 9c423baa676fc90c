import { createContext, useContext } from 'react';
import type { Problem } from '../../core/problem.ts';

export interface FormParts {
  readonly fieldIdOf: (where: string) => string;
  readonly problemOf: (where: string) => Problem | undefined;
}

/** Ties a form's fields to the problems that were found with them. */
export const FormContext = createContext<FormParts | null>(null);

/** The field's id in the page and the problem found with it. */
export function useFormField(where: string): {
  readonly id: string | undefined;
  readonly problem: Problem | undefined;
} {
  const form = useContext(FormContext);
  return { id: form?.fieldIdOf(where), problem: form?.problemOf(where) };
}
