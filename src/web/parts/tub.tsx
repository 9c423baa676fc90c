import { useId } from 'react';
import { pictureLevel } from '../show/picture-level.ts';

interface Props {
  /** Decimal texts in one unit: what there is, what a full tub stands for. */
  readonly have: string;
  readonly full: string;
  readonly isLarge?: boolean;
}

/** Outer and inner outline of the drawing: where the filling begins and ends. */
const TOP = 15;
const BOTTOM = 115;

/** A tub that shows its level. The figure beside it says the same in digits, so that it is hidden from screen readers. */
export function Tub({ have, full, isLarge = false }: Props) {
  const clip = useId();
  const height = pictureLevel(have, full) * (BOTTOM - TOP);
  const scale = isLarge ? 1.5 : 1;
  return (
    <svg viewBox="0 0 96 120" width={96 * scale} height={120 * scale} aria-hidden="true" focusable="false">
      <path d="M10 14h76l-5 96a6 6 0 0 1-6 6H21a6 6 0 0 1-6-6z" fill="var(--card)" />
      <clipPath id={clip}>
        <path d="M11 15h74l-5 95a5 5 0 0 1-5 5H21a5 5 0 0 1-5-5z" />
      </clipPath>
      <rect
        x="8"
        y={BOTTOM - height}
        width="80"
        height={height}
        fill="var(--fill)"
        clipPath={`url(#${clip})`}
      />
      <path
        d="M10 14h76l-5 96a6 6 0 0 1-6 6H21a6 6 0 0 1-6-6z"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2"
      />
      <rect x="6" y="6" width="84" height="9" rx="3" fill="var(--card)" stroke="var(--ink)" strokeWidth="2" />
    </svg>
  );
}
