import { useId } from 'react';
import { pictureLevel } from '../show/picture-level.ts';
import { type PictureKind, SHAPES } from './tub-shapes.ts';

interface Props {
  /** Decimal texts in one unit: what there is, what a full one stands for. */
  readonly have: string;
  readonly full: string;
  readonly kind?: PictureKind;
  readonly isLarge?: boolean;
}

/** A tub or a stack that shows its level. The figure beside it says the same in digits: hidden from screen readers. */
export function Tub({ have, full, kind = 'tub', isLarge = false }: Props) {
  const clip = useId();
  const { outline, strokes, cover, top, bottom } = SHAPES[kind];
  const height = pictureLevel(have, full) * (bottom - top);
  const scale = isLarge ? 1.5 : 1;
  const line = { stroke: 'var(--ink)', strokeWidth: 2 };
  return (
    <svg viewBox="0 0 96 120" width={96 * scale} height={120 * scale} aria-hidden="true" focusable="false">
      <path d={outline} fill="var(--card)" />
      <clipPath id={clip}>
        <path d={outline} />
      </clipPath>
      <rect
        x="6"
        y={bottom - height}
        width="84"
        height={height}
        fill="var(--fill)"
        clipPath={`url(#${clip})`}
      />
      <path d={outline} fill="none" {...line} />
      {strokes && <path d={strokes} fill="none" strokeLinecap="round" {...line} />}
      {cover && <path d={cover} fill="var(--card)" {...line} />}
    </svg>
  );
}
