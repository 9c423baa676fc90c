import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { type ButtonLook, buttonClass } from './button-look.ts';
import { KeepNumbers } from './keep-numbers.tsx';
import { splitHash } from './split-hash.ts';

interface Props extends ButtonLook {
  readonly to: string;
  /** The part of the page. */
  readonly hash?: string;
  readonly children: ReactNode;
  readonly label?: string | undefined;
}

/** A link that leads to doing something. */
export const LinkButton = ({ to, hash, children, label, ...look }: Props) => (
  <Link
    {...splitHash(to)}
    {...(hash !== undefined && { hash })}
    className={buttonClass(look)}
    aria-label={label}
  >
    <KeepNumbers>{children}</KeepNumbers>
  </Link>
);
