import type { z } from 'zod';
import type { making } from '../../contract/index.ts';
import type {
  SignedAddition,
  SignedBegun,
  SignedResize,
  SignedRound,
  SignedSpill,
  SignedStep,
  SignedStrike,
  StruckPhoto,
} from '../../storage/index.ts';
import { say, mishapWords as words } from '../../words/index.ts';
import { gramsText } from '../quantity-text.ts';
import { saying } from '../saying.ts';
import { photoHeading } from './batch-screens.ts';

type Struck = z.output<typeof making.struckEntry>;
type Screen = making.BatchScreen;

interface Records {
  readonly screens: readonly Screen[];
  readonly additions: readonly SignedAddition[];
  readonly stepRecords: readonly SignedStep[];
  readonly begun: readonly SignedBegun[];
  readonly rounds: readonly SignedRound[];
  readonly strikes: readonly SignedStrike[];
  readonly resizes: readonly SignedResize[];
  readonly spills: readonly SignedSpill[];
}

/** Entries that were struck, as they were written, with who struck them, when and why. */
export const viewStruck = ({ screens, additions, strikes, resizes, spills, ...steps }: Records): Struck[] =>
  strikes.flatMap(({ struck_entry_id, reason, happened_at, person_name }) => {
    const strike = { why: reason, struckAt: happened_at, struckBy: person_name };
    const addition = additions.find((row) => row.entry_id === struck_entry_id);
    const resize = resizes.find((each) => each.entry_id === struck_entry_id);
    if (resize) return [viewStruckResize(resize, screens, strike)];
    const spill = spills.find((each) => each.entry_id === struck_entry_id);
    if (spill) return [viewStruckSpill(spill, screens, strike)];
    const row = addition ?? rowsOf(steps).find((each) => each.entry_id === struck_entry_id);
    const kind = addition ? 'addition' : 'step';
    const screen = screens.find((each) => each.kind === kind && each.position === row?.position);
    if (!row || !screen) return [];
    return [
      {
        entryId: struck_entry_id,
        screen: screen.screen,
        what: screen.kind === 'addition' ? screen.itemName : screen.what,
        lotNumber: addition?.lot_number ?? null,
        actualGrams: addition ? gramsText(addition.actual_ug) : null,
        at: row.happened_at,
        by: row.person_name,
        ...strike,
      },
    ];
  });

const rowsOf = ({
  stepRecords,
  begun,
  rounds,
}: Omit<Records, 'screens' | 'additions' | 'strikes' | 'resizes' | 'spills'>) => [
  ...stepRecords,
  ...begun,
  ...rounds,
];

/** It stands with the line that it went by. */
function viewStruckResize(
  resize: SignedResize,
  screens: readonly Screen[],
  strike: Pick<Struck, 'why' | 'struckAt' | 'struckBy'>,
): Struck {
  const screen = screens.find((each) => each.kind === 'addition' && each.position === resize.position);
  const parameters = { grams: gramsText(resize.planned_ug) };
  return {
    entryId: resize.entry_id,
    screen: screen?.screen ?? 0,
    what: say(saying('resized-to', parameters)),
    lotNumber: null,
    actualGrams: null,
    at: resize.happened_at,
    by: resize.person_name,
    ...strike,
  };
}

function viewStruckSpill(
  spill: SignedSpill,
  screens: readonly Screen[],
  strike: Pick<Struck, 'why' | 'struckAt' | 'struckBy'>,
): Struck {
  const screen = screens.find((each) => each.kind === 'addition' && each.position === spill.position);
  const item = screen?.kind === 'addition' ? screen.itemName : '';
  return {
    entryId: spill.entry_id,
    screen: screen?.screen ?? 0,
    what: words.spilt(item, gramsText(spill.spilt_ug), spill.lot_number),
    lotNumber: null,
    actualGrams: null,
    at: spill.happened_at,
    by: spill.person_name,
    ...strike,
  };
}

/** That there was one, and why it went; the picture itself is gone. */
export const viewStruckPhotos = (photos: readonly StruckPhoto[], screens: readonly Screen[]): Struck[] =>
  photos.map((photo) => ({
    entryId: photo.entry_id,
    screen:
      screens.find((each) => each.kind === 'step' && photoHeading(each.position) === photo.heading)?.screen ??
      0,
    what: words.photo(photo.name),
    lotNumber: null,
    actualGrams: null,
    at: photo.happened_at,
    by: photo.person_name,
    why: photo.reason,
    struckAt: photo.struck_at,
    struckBy: photo.struck_by,
  }));
