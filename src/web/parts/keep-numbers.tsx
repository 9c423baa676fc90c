import { Children, type ReactNode } from 'react';
import { splitNumbers } from './split-numbers.ts';

/** Words in which a number such as L-0002 stands in one piece: a browser breaks a line after its hyphen. */
export const KeepNumbers = ({ children }: { readonly children: ReactNode }) =>
  Children.map(children, (child) => (typeof child === 'string' ? keepNumbers(child) : child));

const keepNumbers = (text: string): ReactNode => {
  const parts = splitNumbers(text);
  if (parts.every(({ isNumber }) => !isNumber)) return text;
  return parts.map((part) => (
    <span key={part.at} className={part.isNumber ? 'in-one-piece' : undefined}>
      {part.text}
    </span>
  ));
};
