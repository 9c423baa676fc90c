/** Every number of an SVG path times a factor, to a micrometre. Arc flags would suffer: symbols are drawn without arcs. */
export const scalePath = (d: string, scale: number): string =>
  d.replace(/-?\d+(\.\d+)?/g, (number) => String(Math.round(Number(number) * scale * 1000) / 1000));
