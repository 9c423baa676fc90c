import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { type ButtonLook, buttonClass } from './button-look.ts';

interface Props extends ButtonLook {
  readonly to: string;
  readonly children: ReactNode;
  readonly label?: string | undefined;
}

/** A link that leads to doing something. */
export const LinkButton = ({ to, children, label, ...look }: Props) => (
  <Link to={to} className={buttonClass(look)} aria-label={label}>
    {children}
  </Link>
);
