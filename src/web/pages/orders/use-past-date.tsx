import { type ReactNode, useState } from 'react';
import { orderWords, sayDateWithYear } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';

const { form: words } = orderWords;

/**
 * Asks once whether a day that is past is meant, before what was typed is entered. A day before the order was placed is
 * refused whatever is answered, so it is not asked about.
 */
export function usePastDate(
  day: string,
  placedOn: string,
  goOn: () => void,
): { readonly ask: () => void; readonly question: ReactNode } {
  const today = useRead('getWorkshop').data?.today ?? '';
  const [isAsked, setAsked] = useState(false);
  const close = () => setAsked(false);
  return {
    ask: () => (day !== '' && day < today && day >= placedOn ? setAsked(true) : goOn()),
    question: (
      <Dialog title={words.pastTitle} isOpen={isAsked} onClose={close} closeWord={words.pastNo}>
        <p>{words.pastSays(day === '' ? '' : sayDateWithYear(day))}</p>
        <div>
          <Button
            isAct
            onPress={() => {
              close();
              goOn();
            }}
          >
            {words.pastYes}
          </Button>
        </div>
      </Dialog>
    ),
  };
}
