import { done, type Result } from '../../core/problem.ts';
import { checkLabel } from './check-label.ts';
import type { Faces } from './face.ts';
import type { Label, LabelLayout } from './label.ts';
import { layoutBack } from './layout-back.ts';
import { layoutFront } from './layout-front.ts';

/** Sets both faces at true size. Reports everything that is wrong with both, not only the first. */
export function layoutLabel(label: Label, faces: Faces): Result<LabelLayout> {
  const problems = checkLabel(label, faces);
  if (problems.length > 0) return { ok: false, problems };
  const front = layoutFront(label.front, faces);
  const back = layoutBack(label.back, faces);
  if (!front.ok || !back.ok) {
    return { ok: false, problems: [front, back].flatMap((face) => (face.ok ? [] : face.problems)) };
  }
  const { figureHeightMm, ...face } = front.value;
  return done({ front: face, back: back.value, figureHeightMm });
}
