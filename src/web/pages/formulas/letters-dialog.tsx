import { useState } from 'react';
import { letterWords, memoryWords as words } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import styles from './check.module.css';

interface Props {
  /** Of a formula's suppliers, or of the one of a material. */
  readonly of: 'formula' | 'material';
  readonly id: string;
}

/** A ready letter to each supplier, to copy or to print. */
export function WriteToSupplier({ of, id }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button onPress={() => setOpen(true)}>{words.write}</Button>
      {isOpen && (
        <Dialog title={words.write} isOpen onClose={() => setOpen(false)} closeWord={words.close}>
          <Letters of={of} id={id} />
        </Dialog>
      )}
    </>
  );
}

function Letters({ of, id }: Props) {
  const name = of === 'formula' ? 'listFormulaLetters' : 'listMaterialLetters';
  const { data } = useRead(name, { params: { id } });
  if (!data) return <p role="status">{words.reading}</p>;
  if (data.length === 0) return <p>{words.nothingToAsk}</p>;
  return data.map(({ supplier, materials, text }) => (
    <section key={supplier} aria-label={supplier || letterWords.noSupplier}>
      <h3>{supplier || letterWords.noSupplier}</h3>
      <p className="soft">{materials.join(', ')}</p>
      <pre className={styles.letter}>{text}</pre>
      <Copy text={text} />{' '}
      <PrintLink
        paper={of === 'formula' ? 'getFormulaLetterPdf' : 'getMaterialLetterPdf'}
        address={{ params: { id }, query: { supplier } }}
      >
        {words.print}
      </PrintLink>
    </section>
  ));
}

function Copy({ text }: { readonly text: string }) {
  const [said, setSaid] = useState('');
  const copy = () =>
    navigator.clipboard.writeText(text).then(
      () => setSaid(words.copied),
      () => setSaid(words.notCopied),
    );
  return (
    <>
      <Button onPress={() => void copy()}>{words.copy}</Button>
      <span role="status">{said}</span>
    </>
  );
}
