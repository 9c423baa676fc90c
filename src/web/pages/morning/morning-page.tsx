import { morningWords, sayDate, sayTime } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { Disclosure } from '../../parts/disclosure.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Page } from '../../shell/page.tsx';
import { FirstSteps } from '../start/first-steps.tsx';
import { GoodsOrdered } from './goods-ordered.tsx';
import styles from './morning.module.css';
import { MorningList } from './morning-list.tsx';

export const MorningPage = () => (
  <Loaded read={useRead('getMorning')} title={morningWords.title}>
    {(morning) => <MorningView morning={morning} />}
  </Loaded>
);

function MorningView({ morning }: { readonly morning: AnswerOf<'getMorning'> }) {
  const timeZone = useTimeZone();
  // What has to be told or called back at once goes before every parcel.
  const isPressing = morning.papers.some(({ state }) => state === 'stop');
  return (
    <Page
      title={morningWords.title}
      says={<Sentence saying={morning.sentence} />}
      soft={morningWords.at(sayDate(morning.today), sayTime(morning.now, timeZone))}
      actions={<LinkButton to="/orders/new">{morningWords.newOrder}</LinkButton>}
    >
      <FirstSteps />
      {isPressing && <Papers lines={morning.papers} />}
      <div className={styles.lists}>
        <MorningList
          hasGreen
          title={morningWords.send}
          lines={morning.sendToday}
          empty={morningWords.nothing.send}
        />
        <MorningList
          hasGreen
          title={morningWords.make}
          lines={morning.makeNext}
          empty={morningWords.nothing.make}
        />
        <MorningList
          anchor="buy"
          title={morningWords.buy}
          lines={morning.buyThisWeek}
          empty={morningWords.nothing.buy}
          beside={(line) => <GoodsOrdered line={line} today={morning.today} />}
        />
      </div>
      {!isPressing && <Papers lines={morning.papers} />}
      <Disclosure title={morningWords.how}>
        {() => morningWords.worked.map((text) => <p key={text}>{text}</p>)}
      </Disclosure>
    </Page>
  );
}

const Papers = ({ lines }: { readonly lines: AnswerOf<'getMorning'>['papers'] }) =>
  lines.length > 0 && <MorningList title={morningWords.papers} lines={lines} empty="" anchor="papers" />;
