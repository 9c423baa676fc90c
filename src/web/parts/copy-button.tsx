import { useState } from 'react';
import { answerWords } from '../../words/index.ts';
import { Button } from './button.tsx';

interface Props {
  readonly text: string;
  readonly children: string;
  readonly isAct?: boolean;
}

/** A browser lets a page write into the clipboard over https and on this computer; elsewhere the old way is tried. */
async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyBySelection(text);
  }
}

function copyBySelection(text: string): boolean {
  const box = document.createElement('textarea');
  box.value = text;
  document.body.append(box);
  box.select();
  const isCopied = document.execCommand('copy');
  box.remove();
  return isCopied;
}

/** One tap copies; what became of it is said beside the button, and read out. */
export function CopyButton({ text, children, isAct = false }: Props) {
  const [said, setSaid] = useState('');
  return (
    <span>
      <Button
        isAct={isAct}
        onPress={() =>
          void copy(text).then((isCopied) => setSaid(isCopied ? answerWords.copied : answerWords.notCopied))
        }
      >
        {children}
      </Button>{' '}
      <span role="status" className="soft">
        {said}
      </span>
    </span>
  );
}
