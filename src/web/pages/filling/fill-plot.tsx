import { fillingWords } from '../../../words/index.ts';
import { plotFills } from './plot-fills.ts';
import styles from './run.module.css';
import type { Run } from './run.ts';

/** Each tin as a dot against what the label states. */
export function FillPlot({ run }: { readonly run: Run }) {
  const kept = run.weights.filter((weight) => !weight.isStruck);
  if (kept.length === 0) return null;
  const plot = plotFills(
    kept.map((weight) => Number(weight.netGrams)),
    [Number(run.declaredGrams), Number(run.aimGrams)],
  );
  const [declared, aim] = plot.lines;
  return (
    <svg
      className={styles.plot}
      viewBox={`0 0 ${plot.width} ${plot.height}`}
      role="img"
      aria-label={fillingWords.plotLabel(kept.length, run.declaredGrams)}
    >
      <line x1="0" x2={plot.width} y1={declared} y2={declared} className={styles.declared} />
      <text x="4" y={(declared ?? 0) + 18} className={styles.word}>
        {fillingWords.declared} {run.declaredGrams} g
      </text>
      {aim !== declared && <line x1="0" x2={plot.width} y1={aim} y2={aim} className={styles.aim} />}
      {plot.dots.map((dot, index) => (
        <circle
          key={kept[index]?.entryId}
          cx={dot.x}
          cy={dot.y}
          r="6"
          className={kept[index]?.verdict === 'too-light' ? styles.light : styles.dot}
        />
      ))}
    </svg>
  );
}
