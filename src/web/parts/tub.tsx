import { useId } from 'react';
import { pictureLevel } from '../show/picture-level.ts';

interface Props {
  /** Decimal texts in one unit: what there is, what a full one stands for. */
  readonly have: string;
  readonly full: string;
  /** What is weighed stands in a tub; what is counted (tins, lids, labels) in a box. */
  readonly kind?: 'tub' | 'box';
  readonly isLarge?: boolean;
}

interface Shape {
  readonly outline: string;
  /** The same, a stroke's width further in. */
  readonly inside: string;
  /** Where the filling begins and ends. */
  readonly top: number;
  readonly bottom: number;
}

const SHAPES: Readonly<Record<'tub' | 'box', Shape>> = {
  tub: {
    outline: 'M10 14h76l-5 96a6 6 0 0 1-6 6H21a6 6 0 0 1-6-6z',
    inside: 'M11 15h74l-5 95a5 5 0 0 1-5 5H21a5 5 0 0 1-5-5z',
    top: 15,
    bottom: 115,
  },
  box: { outline: 'M14 30h68v86H14z', inside: 'M15 31h66v84H15z', top: 31, bottom: 115 },
};

/** A tub or a box that shows its level. The figure beside it says the same in digits: hidden from screen readers. */
export function Tub({ have, full, kind = 'tub', isLarge = false }: Props) {
  const clip = useId();
  const { outline, inside, top, bottom } = SHAPES[kind];
  const height = pictureLevel(have, full) * (bottom - top);
  const scale = isLarge ? 1.5 : 1;
  const line = { stroke: 'var(--ink)', strokeWidth: 2 };
  return (
    <svg viewBox="0 0 96 120" width={96 * scale} height={120 * scale} aria-hidden="true" focusable="false">
      <path d={outline} fill="var(--card)" />
      <clipPath id={clip}>
        <path d={inside} />
      </clipPath>
      <rect
        x="8"
        y={bottom - height}
        width="80"
        height={height}
        fill="var(--fill)"
        clipPath={`url(#${clip})`}
      />
      <path d={outline} fill="none" {...line} />
      {kind === 'tub' ? (
        <rect x="6" y="6" width="84" height="9" rx="3" fill="var(--card)" {...line} />
      ) : (
        // The flaps of an open box.
        <path d="M14 30L4 12M82 30l10-18" fill="none" strokeLinecap="round" {...line} />
      )}
    </svg>
  );
}
