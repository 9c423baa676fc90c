import { workshopWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { CommandLine } from '../../parts/command-line.tsx';
import { startOptions } from '../../show/start-options.ts';
import styles from './workshop.module.css';
import type { Workshop } from './workshop.ts';

const { other: words } = workshopWords;

/** From the example to one's own workshop and back: the program opens one file, so that nobody writes into the wrong one. */
export function OtherWorkshopCard({ workshop }: { readonly workshop: Workshop }) {
  const { isExample } = workshop;
  const here = startOptions(workshop.folder, location.port);
  const own = words.startCommand(isExample ? words.anyOwnFolder : here);
  const example = words.exampleCommand(isExample ? here : words.usualExampleFolder);
  return (
    <Card title={isExample ? words.toOwn : words.toExample}>
      <p className="soft">{words.about}</p>
      <p>
        {words.standsIn} <code>{workshop.folder}</code>
      </p>
      <ol className={styles.numbered}>
        <li>{words.stop}</li>
        <li>
          {isExample ? words.startOwn : words.startExample}
          <CommandLine command={isExample ? own : example} />
        </li>
        <li>
          {words.back}
          <CommandLine command={isExample ? example : own} />
        </li>
      </ol>
      <p className="soft small">{words.both}</p>
    </Card>
  );
}
