import { type ReactNode, useEffect } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { partWords } from '../../words/index.ts';
import { focusHeading } from '../shell/focus-heading.ts';
import { Button } from './button.tsx';
import styles from './dialog.module.css';
import { useShield } from './use-shield.ts';

interface Props {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Words of the button that leaves without doing anything. */
  readonly closeWord?: string;
  /** Rows of several fields beside each other stand in it. */
  readonly isWide?: boolean;
  /** Something is typed: then only its buttons leave it, so that no stray tap or Escape loses it. */
  readonly isHeld?: boolean;
  /** 64 px, for a greasy knuckle. */
  readonly isBench?: boolean;
}

/** Long enough for the button that opened it to get its focus back, where it is still there. */
const SETTLED_MS = 120;

/** What opened the dialog may have gone with what was done in it: then the page's heading is the place to go on from. */
function catchLostFocus(): void {
  setTimeout(() => {
    if (document.activeElement === document.body) focusHeading();
  }, SETTLED_MS);
}

/** A question before the page goes on. Escape, the veil and the last button leave it. */
export function Dialog({
  title,
  isOpen,
  onClose,
  children,
  closeWord = partWords.cancel,
  isWide = false,
  isHeld = false,
  isBench = false,
}: Props) {
  useEffect(() => (isOpen ? catchLostFocus : undefined), [isOpen]);
  useShield(isOpen ? title : null);
  return (
    <ModalOverlay
      className={styles.veil ?? ''}
      isOpen={isOpen}
      onOpenChange={(isStillOpen) => !isStillOpen && onClose()}
      isDismissable={!isHeld}
      isKeyboardDismissDisabled={isHeld}
    >
      <Modal className={`${styles.sheet} ${isWide ? styles.wide : ''}`}>
        <AriaDialog className={styles.dialog ?? ''}>
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          {children}
          <div>
            <Button isBench={isBench} onPress={onClose}>
              {closeWord}
            </Button>
          </div>
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
