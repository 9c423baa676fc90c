import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { partWords } from '../../words/index.ts';
import { Button } from './button.tsx';
import styles from './dialog.module.css';

interface Props {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Words of the button that leaves without doing anything. */
  readonly closeWord?: string;
}

/** A question before the page goes on. Escape, the veil and the last button leave it. */
export const Dialog = ({ title, isOpen, onClose, children, closeWord = partWords.cancel }: Props) => (
  <ModalOverlay
    className={styles.veil ?? ''}
    isOpen={isOpen}
    onOpenChange={(isStillOpen) => !isStillOpen && onClose()}
    isDismissable
  >
    <Modal className={styles.sheet ?? ''}>
      <AriaDialog className={styles.dialog ?? ''}>
        <Heading slot="title" level={2}>
          {title}
        </Heading>
        {children}
        <div>
          <Button onPress={onClose}>{closeWord}</Button>
        </div>
      </AriaDialog>
    </Modal>
  </ModalOverlay>
);
