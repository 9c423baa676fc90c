import { CookingPot, Droplets, Flame, Hand, HandMetal, ShieldAlert, Thermometer, Wind } from 'lucide-react';
import { makingWords, stepWords } from '../../../words/index.ts';
import { Disclosure } from '../../parts/disclosure.tsx';
import type { Step } from './batch.ts';
import styles from './step.module.css';
import { type Caution, cautionsOf } from './step-cautions.ts';

const { cautions: words } = stepWords;

const PICTURES = {
  'hot-fat': Flame,
  'not-alone': Hand,
  'water-bath': CookingPot,
  'no-water': Droplets,
  'stays-hot': Thermometer,
  condensation: Droplets,
  'turning-whisk': HandMetal,
  'dust-cloud': Wind,
} as const satisfies Record<Caution, unknown>;

/** A few lines with a picture each, before the step begins; the rest for those who want it. */
export function CautionList({ screen }: { readonly screen: Step }) {
  const cautions = cautionsOf(screen);
  if (cautions.length === 0 && screen.caution === '') return null;
  if (screen.begun.length > 0 || screen.done)
    return (
      <Disclosure isBench title={makingWords.caution}>
        {() => <Lines screen={screen} cautions={cautions} />}
      </Disclosure>
    );
  return (
    <section className={styles.cautions} aria-label={words.title}>
      <Lines screen={screen} cautions={cautions} />
    </section>
  );
}

const Lines = ({ screen, cautions }: { readonly screen: Step; readonly cautions: readonly Caution[] }) => (
  <>
    <ul>
      {screen.caution !== '' && (
        <li>
          <ShieldAlert size={40} aria-hidden />
          <span>{screen.caution}</span>
        </li>
      )}
      {cautions.map((caution) => {
        const Picture = PICTURES[caution];
        return (
          <li key={caution}>
            <Picture size={40} aria-hidden />
            <span>{words[caution].says}</span>
          </li>
        );
      })}
    </ul>
    {cautions.length > 0 && (
      <Disclosure isBench title={words.more}>
        {() => (
          <div className={styles.more}>
            {cautions.map((caution) => (
              <p key={caution}>
                <strong>{words[caution].says}</strong> {words[caution].more}
              </p>
            ))}
            <p className="soft small">{words.source}</p>
          </div>
        )}
      </Disclosure>
    )}
  </>
);
