import { Printer } from 'lucide-react';
import type { ReactNode } from 'react';
import type { RouteName } from '../../contract/index.ts';
import { partWords } from '../../words/index.ts';
import { type Address, requestUrl } from '../api/request-url.ts';
import { type ButtonLook, buttonClass } from './button-look.ts';

interface Props extends ButtonLook {
  readonly paper: RouteName;
  readonly address: Address;
  readonly children: ReactNode;
}

/** Opens a paper as a PDF beside the page. */
export const PrintLink = ({ paper, address, children, ...look }: Props) => (
  <a className={buttonClass(look)} href={requestUrl(paper, address)} target="_blank" rel="noopener">
    <Printer size={18} aria-hidden />
    <span>
      {children}
      <span className="visually-hidden"> ({partWords.print})</span>
    </span>
  </a>
);
