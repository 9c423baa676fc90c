import { useState } from 'react';
import { labelWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import styles from './label.module.css';
import type { Label } from './label.ts';

const KINDS = { there: 'ready', missing: 'stop', unknown: 'watch', 'not-needed': 'plain' } as const;

/** By which law, where it must stand, and whether anybody has seen the page. */
const AskedFor = ({ element }: { readonly element: Label['elements'][number] }) => (
  <span className="small soft">
    {[
      element.source,
      labelWords.placeOf(element.onContainer, element.onPackaging),
      element.confidence === 'memory' && element.required ? labelWords.fromMemory : '',
    ]
      .filter((part) => part !== '')
      .join('; ')}
  </span>
);

/** Every element that the market asks for: there, missing, or not needed and why; with its legal source. */
export function Elements({ label }: { readonly label: Label }) {
  const [isCopied, setCopied] = useState(false);
  const ingredients = label.elements.find((element) => element.element === 'ingredients')?.text ?? '';
  async function copy() {
    await navigator.clipboard.writeText(ingredients);
    setCopied(true);
  }
  return (
    <Card title={labelWords.elements} isFlush>
      <Table
        caption={labelWords.elements}
        isCaptionHidden
        rows={label.elements}
        keyOf={(element) => element.element}
        columns={[
          { head: labelWords.element, cell: (element) => labelWords.nameOf(element.element) },
          {
            head: labelWords.text,
            cell: (element) => (
              <>
                {element.text}
                {element.reason && (
                  <span className="soft small">
                    {' '}
                    <Sentence saying={element.reason} />
                  </span>
                )}
              </>
            ),
          },
          {
            head: labelWords.state,
            cell: (element) => <State kind={KINDS[element.state]}>{labelWords.states[element.state]}</State>,
          },
          {
            head: labelWords.source,
            cell: (element) => <AskedFor element={element} />,
          },
        ]}
      />
      {ingredients !== '' && (
        <p className={styles.copy}>
          <Button onPress={() => void copy()}>{isCopied ? labelWords.copied : labelWords.copyText}</Button>
        </p>
      )}
    </Card>
  );
}
