import type { ReactNode } from 'react';
import { Button as AriaButton } from 'react-aria-components';
import { type ButtonLook, buttonClass } from './button-look.ts';
import { KeepNumbers } from './keep-numbers.tsx';

interface Props extends ButtonLook {
  readonly children: ReactNode;
  readonly onPress?: (() => void) | undefined;
  readonly type?: 'button' | 'submit';
  /** Sent and not answered yet: pressing again does nothing. */
  readonly isBusy?: boolean;
  readonly isDisabled?: boolean;
  /** Where the words alone do not tell which thing is meant. */
  readonly label?: string | undefined;
}

export const Button = ({
  children,
  onPress,
  type = 'button',
  isBusy = false,
  isDisabled = false,
  label,
  ...look
}: Props) => (
  <AriaButton
    type={type}
    className={buttonClass({ ...look, isBusy })}
    isDisabled={isDisabled}
    {...(onPress && !isBusy ? { onPress } : {})}
    {...(label === undefined ? {} : { 'aria-label': label })}
  >
    <KeepNumbers>{children}</KeepNumbers>
  </AriaButton>
);
