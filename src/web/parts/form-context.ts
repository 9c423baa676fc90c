import { createContext, useContext, useState } from 'react';
import type { Problem } from '../../core/problem.ts';

export interface FormParts {
  readonly fieldIdOf: (where: string) => string;
  readonly problemOf: (where: string) => Problem | undefined;
}

/** Ties a form's fields to the problems that were found with them. */
export const FormContext = createContext<FormParts | null>(null);

export interface FormField {
  readonly id: string | undefined;
  readonly problem: Problem | undefined;
}

/** The field's id in the page and the problem found with what stands in it; once that is changed, the problem is settled. */
export function useFormField(where: string, value: string | null): FormField {
  const form = useContext(FormContext);
  const problem = form?.problemOf(where);
  const [judged, setJudged] = useState({ problem, value });
  if (judged.problem !== problem) setJudged({ problem, value });
  const isStillSo = judged.problem === problem && judged.value === value;
  return { id: form?.fieldIdOf(where), problem: isStillSo ? problem : undefined };
}
