import { type ReactNode, useContext, useEffect, useRef } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { FormContext } from '../../parts/form-context.ts';
import { Problems } from '../../parts/problems.tsx';
import styles from './bench.module.css';

interface Props {
  readonly children: ReactNode;
  /** The way out of a problem, where it lies on another page. */
  readonly wayOut?: (problem: Problem) => ReactNode;
}

const NONE: readonly Problem[] = [];

/**
 * Scale, verdict, keys and the button that keeps: in view whatever stands above them. What is wrong with the form is
 * said right above; where both have no room, its first lines scroll off and not the digits.
 */
export function Dock({ children, wayOut }: Props) {
  const form = useContext(FormContext);
  const said = useRef<HTMLDivElement>(null);
  const dock = useRef<HTMLDivElement>(null);
  const judged = form?.judged ?? NONE;
  useEffect(() => {
    if (judged.length > 0 && said.current && dock.current) bringAbove(said.current, dock.current);
  }, [judged]);
  return (
    <>
      <div ref={said} className={styles.said}>
        <Problems problems={form?.standing ?? NONE} fieldIdOf={form?.fieldIdOf} wayOut={wayOut} />
      </div>
      <div ref={dock} className={styles.dock}>
        {children}
      </div>
    </>
  );
}

function bringAbove(said: HTMLElement, dock: HTMLElement): void {
  const room = window.innerHeight - dock.offsetHeight;
  said.style.scrollMarginBottom = `${dock.offsetHeight}px`;
  said.scrollIntoView({ block: said.offsetHeight <= room ? 'nearest' : 'end' });
}
