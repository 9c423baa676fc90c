import type { steps } from '../../../contract/index.ts';

/** Outlines of what stands on a whisk or in a bowl, drawn for this page. */
const SHAPES: Readonly<Record<steps.WhippedLook, string>> = {
  loose: 'M6 32q8-5 16 0t16 0M6 38q8-5 16 0t16 0M22 6v18',
  'soft-peaks': 'M5 38h34M9 38q3-16 13-18 5-2 4-8 8 5 5 12 4 4 5 14',
  'firm-peaks': 'M5 38h34M8 38q6-8 9-18 2-6 5-14 3 8 5 14 3 10 9 18',
  stiff: 'M5 38h34M9 38l5-14 6 4 4-18 5 16 6-3 2 15',
  grainy: 'M5 38h34M12 32h.1M20 28h.1M28 31h.1M34 34h.1M16 22h.1M24 20h.1M30 24h.1M20 35h.1M26 36h.1',
  melting:
    'M5 38h34M10 38q2-10 12-11t13 11M22 6q-5 7 0 10 5-3 0-10M32 10q-3 5 0 7 3-2 0-7M12 10q-3 5 0 7 3-2 0-7',
};

export const LookPicture = ({ look }: { readonly look: steps.WhippedLook }) => (
  <svg
    viewBox="0 0 44 44"
    width="44"
    height="44"
    fill="none"
    stroke="currentColor"
    strokeWidth={look === 'grainy' ? 4 : 2.5}
    strokeLinecap="round"
    strokeLinejoin="round"
    aria-hidden="true"
  >
    <path d={SHAPES[look]} />
  </svg>
);
