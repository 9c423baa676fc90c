import { Printer } from 'lucide-react';
import type { ReactNode } from 'react';
import type { RouteName } from '../../contract/index.ts';
import { partWords } from '../../words/index.ts';
import { type Address, requestUrl } from '../api/request-url.ts';
import { Button } from './button.tsx';
import { type ButtonLook, buttonClass } from './button-look.ts';

interface Props extends ButtonLook {
  readonly paper: RouteName;
  readonly address: Address;
  /** There is nothing to print yet; the page says why. */
  readonly isDisabled?: boolean;
  readonly children: ReactNode;
}

/** Opens a paper as a PDF beside the page. */
export function PrintLink({ paper, address, isDisabled = false, children, ...look }: Props) {
  const face = (
    <>
      <Printer size={18} aria-hidden />
      <span>
        {children}
        <span className="visually-hidden"> ({partWords.print})</span>
      </span>
    </>
  );
  if (isDisabled)
    return (
      <Button isDisabled {...look}>
        {face}
      </Button>
    );
  return (
    <a className={buttonClass(look)} href={requestUrl(paper, address)} target="_blank" rel="noopener">
      {face}
    </a>
  );
}
