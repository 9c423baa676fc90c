import { createContext, useContext, useEffect, useState } from 'react';
import type { Problem } from '../../core/problem.ts';

export interface FormParts {
  /** As they were found: another list means that the form was judged anew. */
  readonly judged: readonly Problem[];
  /** Of these, what still speaks of what is typed. */
  readonly standing: readonly Problem[];
  readonly fieldIdOf: (where: string) => string;
  readonly problemOf: (where: string) => Problem | undefined;
  /** Makes a field known; the answer takes it back. */
  readonly addField: (where: string) => () => void;
  /** What stood in this field when the form was judged stands there no more. */
  readonly tellChange: (where: string, before: string | null) => void;
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
  const { judged, addField, tellChange } = form ?? {};
  const [seen, setSeen] = useState({ judged, value });
  if (seen.judged !== judged) setSeen({ judged, value });
  const before = seen.judged === judged ? seen.value : value;
  useEffect(() => addField?.(where), [addField, where]);
  useEffect(() => {
    if (before !== value) tellChange?.(where, before);
  }, [tellChange, where, before, value]);
  return {
    id: form?.fieldIdOf(where),
    problem: before === value ? form?.problemOf(where) : undefined,
  };
}
