import { Camera } from 'lucide-react';
import { useId, useState } from 'react';
import { Button as AriaButton } from 'react-aria-components';
import { stepWords } from '../../../words/index.ts';
import { readBase64 } from '../../api/read-base64.ts';
import { requestUrl } from '../../api/request-url.ts';
import type { BodyOf } from '../../api/shapes.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { useWrite } from '../../api/use-write.ts';
import { useKept } from '../../away/use-kept.ts';
import { Button } from '../../parts/button.tsx';
import { buttonClass } from '../../parts/button-look.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { Moment } from '../../parts/moment.tsx';
import { Problems } from '../../parts/problems.tsx';
import { State } from '../../parts/state.tsx';
import type { Batch, Step } from './batch.ts';
import { shrinkPhoto } from './shrink-photo.ts';
import styles from './step.module.css';

interface Props {
  readonly batch: Batch;
  readonly screen: Step;
}

const { photo: words } = stepWords;

interface Shown {
  readonly key: string;
  /** null: it waits on this tablet, and can be struck once it is at the workshop. */
  readonly entryId: string | null;
  readonly src: string;
  readonly caption: string;
  readonly by: string;
  readonly at: string;
  readonly isWaiting: boolean;
}

/** Photographs of a step: small here, large on a tap, those that wait on this tablet too. */
export function StepPhotos({ batch, screen }: Props) {
  const photos = usePhotos(batch.id, screen);
  const [large, setLarge] = useState<Shown>();
  return (
    <section className={styles.box} aria-label={words.title}>
      {photos.length > 0 && (
        <ul className={styles.photos}>
          {photos.map((photo) => (
            <li key={photo.key}>
              <AriaButton
                className={styles.thumb ?? ''}
                aria-label={words.large(photo.caption)}
                onPress={() => setLarge(photo)}
              >
                <img src={photo.src} alt="" loading="lazy" />
                <span>{photo.isWaiting ? words.waiting : photo.caption}</span>
              </AriaButton>
            </li>
          ))}
        </ul>
      )}
      <TakePhoto batch={batch} screen={screen} />
      <Dialog
        isBench
        title={large?.caption ?? ''}
        isOpen={large !== undefined}
        onClose={() => setLarge(undefined)}
        closeWord={words.close}
        isWide
      >
        {large && (
          <>
            <img className={styles.large} src={large.src} alt={large.caption} />
            <p className="soft">
              {words.by(large.by)}, <Moment at={large.at} />
            </p>
            {large.entryId !== null && (
              <StrikePhoto batch={batch} entryId={large.entryId} onStruck={() => setLarge(undefined)} />
            )}
          </>
        )}
      </Dialog>
    </section>
  );
}

function usePhotos(batchId: string, screen: Step): Shown[] {
  const known = new Set(screen.photos.map(({ entryId }) => entryId));
  const waiting = useKept(batchId).flatMap((entry): Shown[] => {
    if (entry.route !== 'addStepPhoto' || known.has(entry.id)) return [];
    const { position, base64, caption } = entry.body as BodyOf<'addStepPhoto'>;
    if (position !== screen.position) return [];
    const src = `data:image/jpeg;base64,${base64}`;
    return [
      {
        key: entry.id,
        entryId: null,
        src,
        caption: caption || screen.what,
        by: '',
        at: entry.at,
        isWaiting: true,
      },
    ];
  });
  const kept = screen.photos.map(
    (photo): Shown => ({
      ...photo,
      key: photo.id,
      src: requestUrl('getAttachment', { params: { id: photo.id } }),
      isWaiting: false,
    }),
  );
  return [...kept, ...waiting];
}

interface StrikeProps {
  readonly batch: Batch;
  readonly entryId: string;
  readonly onStruck: () => void;
}

/** Two taps: a person on it, or the wrong step. The picture goes for good, that there was one stays on record. */
function StrikePhoto({ batch, entryId, onStruck }: StrikeProps) {
  const [isAsked, setAsked] = useState(false);
  const strike = useWrite('strikeStepPhoto');
  async function send(reason: string) {
    if (await strike.write({ params: { id: batch.id }, body: { entryId, reason } })) onStruck();
  }
  if (!isAsked)
    return (
      <div>
        <Button isBench onPress={() => setAsked(true)}>
          {words.strike}
        </Button>
      </div>
    );
  return (
    <>
      <p>{words.strikeSays}</p>
      <Problems problems={strike.problems} />
      <div className={styles.loadsRow}>
        {words.strikeWhys.map((reason) => (
          <Button key={reason} isStop isBench isBusy={strike.isBusy} onPress={() => void send(reason)}>
            {reason}
          </Button>
        ))}
      </div>
    </>
  );
}

/** The tablet's camera, the rule before it, and a look at what was taken before it is kept. */
function TakePhoto({ batch, screen }: Props) {
  const id = useId();
  const save = useBenchWrite('addStepPhoto');
  const [taken, setTaken] = useState<{ readonly base64: string }>();
  const [caption, setCaption] = useState('');
  const [wrong, setWrong] = useState('');
  const [isShrinking, setShrinking] = useState(false);
  async function shrink(file: File | undefined) {
    if (!file) return;
    setWrong('');
    setShrinking(true);
    try {
      const small = await shrinkPhoto(file);
      if (small) setTaken({ base64: await readBase64(small) });
      else setWrong(words.tooHeavy);
    } catch {
      // The browser does not know this kind of picture.
      setWrong(words.notReadable);
    }
    setShrinking(false);
  }
  function drop() {
    setTaken(undefined);
    setCaption('');
    save.forget();
  }
  async function keep() {
    if (!taken) return;
    const body = { position: screen.position, caption, base64: taken.base64 };
    if (await save.write({ params: { id: batch.id }, body })) drop();
  }
  return (
    <div>
      <label htmlFor={id} className={buttonClass({ isBench: true, isBusy: isShrinking })}>
        <Camera size={28} aria-hidden />
        {isShrinking ? words.shrinking : words.take}
      </label>
      <input
        id={id}
        className="visually-hidden"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(event) => {
          void shrink(event.target.files?.[0]);
          // The same picture again is a change too.
          event.target.value = '';
        }}
      />
      <p className="soft small">{words.rule}</p>
      <p role="status">{wrong !== '' && <State kind="stop">{wrong}</State>}</p>
      <Dialog
        isBench
        title={words.look}
        isOpen={taken !== undefined}
        onClose={drop}
        closeWord={words.drop}
        isWide
      >
        {taken && (
          <Form label={words.look} problems={save.problems} onSubmit={() => void keep()}>
            <img className={styles.look} src={`data:image/jpeg;base64,${taken.base64}`} alt="" />
            <p>
              <strong>{words.rule}</strong>
            </p>
            <Field
              label={words.caption}
              where="caption"
              value={caption}
              onChange={setCaption}
              isOptional
              isBench
            />
            <Button type="submit" isAct isBench isBusy={save.isBusy}>
              {words.keep}
            </Button>
          </Form>
        )}
      </Dialog>
    </div>
  );
}
