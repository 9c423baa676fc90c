import { useLocation } from '@tanstack/react-router';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { shellWords } from '../../words/index.ts';
import { MAIN_ID } from './skip-link.tsx';

interface Props {
  readonly title: string;
  readonly children: ReactNode;
}

/** Where the last heading stood: on the first page nothing is focused, after that each new page's heading is. */
let lastPath: string | null = null;

/** Someone who already moved into the page is not pulled back to its top. */
const isInsidePage = (): boolean =>
  document.activeElement !== null &&
  document.activeElement !== document.getElementById(MAIN_ID) &&
  (document.getElementById(MAIN_ID)?.contains(document.activeElement) ?? false);

export function PageHeading({ title, children }: Props) {
  const { pathname } = useLocation();
  /** As it was when this page came up: while the next one is being fetched the address has already changed. */
  const [path] = useState(pathname);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = shellWords.titleOf(title);
  }, [title]);
  useEffect(() => {
    const isNew = lastPath !== null && lastPath !== path;
    lastPath = path;
    if (isNew && !isInsidePage()) heading.current?.focus();
  }, [path]);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {children}
    </h1>
  );
}
