import { type ReactNode, useEffect, useRef } from 'react';
import { shellWords } from '../../words/index.ts';
import { KeepNumbers } from '../parts/keep-numbers.tsx';
import { MAIN_ID } from './skip-link.tsx';

interface Props {
  readonly title: string;
  readonly children: ReactNode;
}

/** On the first page nothing is focused, after that each new page's heading is. */
let isFirstPage = true;

/** Someone who already moved into the page is not pulled back to its top. */
const isInsidePage = (): boolean =>
  document.activeElement !== null &&
  document.activeElement !== document.getElementById(MAIN_ID) &&
  (document.getElementById(MAIN_ID)?.contains(document.activeElement) ?? false);

export function PageHeading({ title, children }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = shellWords.titleOf(title);
  }, [title]);
  useEffect(() => {
    if (!isFirstPage && !isInsidePage()) heading.current?.focus();
    isFirstPage = false;
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1}>
      <KeepNumbers>{children}</KeepNumbers>
    </h1>
  );
}
