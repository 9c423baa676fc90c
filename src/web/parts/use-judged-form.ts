import { useCallback, useId, useMemo, useRef, useState } from 'react';
import type { Problem } from '../../core/problem.ts';
import type { FormParts } from './form-context.ts';
import { type Changes, standingProblems } from './standing-problems.ts';

const isSameList = (one: readonly Problem[], other: readonly Problem[]): boolean =>
  one.length === other.length && one.every((problem, index) => problem === other[index]);

const UNCHANGED: Changes = new Map();

/** What a form knows of its fields and of what was found with them. */
export function useJudgedForm(problems: readonly Problem[]): FormParts {
  const formId = useId();
  const fields = useRef(new Set<string>());
  const [judged, setJudged] = useState(problems);
  const [changes, setChanges] = useState(UNCHANGED);
  if (!isSameList(judged, problems)) {
    setJudged(problems);
    setChanges(UNCHANGED);
  }
  const addField = useCallback((where: string) => {
    fields.current.add(where);
    return () => {
      fields.current.delete(where);
    };
  }, []);
  const tellChange = useCallback(
    (where: string, before: string | null) =>
      setChanges((now) => (now.has(where) ? now : new Map([...now, [where, before]]))),
    [],
  );
  const standing = useMemo(() => standingProblems(judged, changes, fields.current), [judged, changes]);
  const parts = useMemo((): FormParts => {
    const fieldIdOf = (where: string) => `${formId}-${where.replace(/[^A-Za-z0-9]+/g, '-')}`;
    const problemOf = (where: string) => standing.find((found) => found.where === where);
    return { judged, standing, fieldIdOf, problemOf, addField, tellChange };
  }, [formId, judged, standing, addField, tellChange]);
  return parts;
}
