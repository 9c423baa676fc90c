import { workshopWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { CommandLine } from '../../parts/command-line.tsx';
import styles from './workshop.module.css';

const { other: words } = workshopWords;

/** From the example to one's own workshop and back: the program opens one file, so that nobody writes into the wrong one. */
export const OtherWorkshopCard = ({ isExample }: { readonly isExample: boolean }) => (
  <Card title={isExample ? words.toOwn : words.toExample}>
    <p className="soft">{words.about}</p>
    <ol className={styles.numbered}>
      <li>{words.stop}</li>
      <li>
        {isExample ? words.startOwn : words.startExample}
        <CommandLine command={isExample ? words.ownCommand : words.exampleCommand} />
      </li>
      <li>
        {words.back}
        <CommandLine command={isExample ? words.exampleCommand : words.ownCommand} />
      </li>
    </ol>
    <p className="soft small">{words.both}</p>
  </Card>
);
