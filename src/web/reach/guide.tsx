import { reachGuide } from '../../words/index.ts';
import { requestUrl } from '../api/request-url.ts';
import { buttonClass } from '../parts/button-look.ts';
import { Disclosure } from '../parts/disclosure.tsx';
import styles from './reach.module.css';

/** How to trust the workshop's computer, device by device. */
export const TrustGuide = () => (
  <>
    <div>
      <a className={buttonClass({})} href={requestUrl('getAuthority')} download="gramwright-workshop.crt">
        {reachGuide.hint.get}
      </a>
    </div>
    <p>{reachGuide.check}</p>
    <div className={styles.guide}>
      {reachGuide.devices.map(({ id, name, steps }) => (
        <Disclosure key={id} title={name}>
          {() => (
            <ol className={styles.steps}>
              {steps.map((step) => (
                <li key={step}>{step}</li>
              ))}
            </ol>
          )}
        </Disclosure>
      ))}
    </div>
  </>
);
