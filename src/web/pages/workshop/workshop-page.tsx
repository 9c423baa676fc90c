import { workshopWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Loaded } from '../../parts/loaded.tsx';
import { isOwnComputer } from '../../reach/use-door.ts';
import { ReaderCard } from '../../scales/reader-card.tsx';
import { Page } from '../../shell/page.tsx';
import { BackupCard } from './backup-card.tsx';
import { CheckUpCard } from './check-up-card.tsx';
import { DetailsCard } from './details-card.tsx';
import { ExportCard } from './export-card.tsx';
import { HereCard } from './here-card.tsx';
import { MachineCard } from './machine-card.tsx';
import { OtherWorkshopCard } from './other-workshop-card.tsx';
import { PeopleCard } from './people-card.tsx';
import { PlacesCard } from './places-card.tsx';
import { ReachCard } from './reach-card.tsx';
import { ScalesCard } from './scales-card.tsx';
import styles from './workshop.module.css';
import type { Workshop } from './workshop.ts';

export const WorkshopPage = () => (
  <Loaded read={useRead('getWorkshop')} title={workshopWords.title}>
    {(workshop) => <WorkshopView workshop={workshop} />}
  </Loaded>
);

const WorkshopView = ({ workshop }: { readonly workshop: Workshop }) => (
  <Page
    title={workshopWords.title}
    above={workshopWords.title}
    says={workshopWords.says(workshop.details?.name ?? workshopWords.title)}
  >
    <div className={styles.boards}>
      <div className={styles.column}>
        <PeopleCard people={workshop.people} />
        <ScalesCard scales={workshop.scales} />
        <ReaderCard />
        <PlacesCard places={workshop.places} />
        {isOwnComputer && workshop.details && (
          <DetailsCard details={workshop.details} version={workshop.version} />
        )}
      </div>
      <div className={styles.column}>{isOwnComputer ? <OwnCards workshop={workshop} /> : <HereCard />}</div>
    </div>
  </Page>
);

/** What is done at the workshop's own computer only. */
const OwnCards = ({ workshop }: { readonly workshop: Workshop }) => (
  <>
    {workshop.isExample && <OtherWorkshopCard workshop={workshop} />}
    <ReachCard />
    <BackupCard workshop={workshop} />
    <CheckUpCard />
    <ExportCard />
    <MachineCard />
    {!workshop.isExample && <OtherWorkshopCard workshop={workshop} />}
  </>
);
