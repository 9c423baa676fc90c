import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { splitHash } from './split-hash.ts';

interface Props {
  readonly to: string;
  readonly children: ReactNode;
}

/** A link within a sentence or a table. */
export const TextLink = ({ to, children }: Props) => <Link {...splitHash(to)}>{children}</Link>;
