import { fillingWords, sayGrams } from '../../../words/index.ts';
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
    <figure className={styles.figure}>
      <svg
        className={styles.plot}
        viewBox={`0 0 ${plot.width} ${plot.height}`}
        role="img"
        aria-label={fillingWords.plotLabel(kept.length, run.declaredGrams)}
      >
        <line x1="0" x2={plot.width} y1={declared} y2={declared} className={styles.declared} />
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
      <figcaption className={styles.key}>
        <span>
          <i /> {fillingWords.declared} {sayGrams(run.declaredGrams)}
        </span>
        {aim !== declared && (
          <span>
            <i className={styles.aimKey} /> {fillingWords.aimNet} {sayGrams(run.aimGrams)}
          </span>
        )}
      </figcaption>
    </figure>
  );
}
