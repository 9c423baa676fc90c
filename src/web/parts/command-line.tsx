import { partWords } from '../../words/index.ts';
import { tell } from '../api/notice.ts';
import { Button } from './button.tsx';
import styles from './command-line.module.css';

/** A command to type at the computer that the program runs on, with a way to copy it where the browser has one. */
export function CommandLine({ command }: { readonly command: string }) {
  // Browsers offer the clipboard on this computer only, not over plain http from another one.
  const { clipboard } = navigator as { readonly clipboard?: Clipboard };
  const copy = async (where: Clipboard) => {
    // A browser may refuse it, by its settings or by whoever sits before it.
    tell(
      await where.writeText(command).then(
        () => partWords.copied,
        () => partWords.notCopied,
      ),
    );
  };
  return (
    <div className={styles.line}>
      <code className={styles.command}>{command}</code>
      {clipboard && (
        <Button isPlain onPress={() => void copy(clipboard)} label={`${partWords.copy}: ${command}`}>
          {partWords.copy}
        </Button>
      )}
    </div>
  );
}
