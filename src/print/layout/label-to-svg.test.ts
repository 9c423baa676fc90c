import { describe, expect, it } from 'vitest';
import { buildLabel } from '../../../test/workshop/build-label.ts';
import { must } from '../../core/problem.ts';
import { loadFaces } from '../paint/index.ts';
import { labelToSvg } from './label-to-svg.ts';
import { layoutLabel } from './layout-label.ts';

const svgOf = (change = {}) => labelToSvg(must(layoutLabel(buildLabel(change), loadFaces())));

describe('labelToSvg', () => {
  it('is as large as the label, in millimetres', () => {
    const { front, back } = svgOf({ size: { shape: 'rectangle', widthMm: 80, heightMm: 55 } });
    expect(front).toContain('width="80mm" height="55mm" viewBox="0 0 80 55"');
    expect(back).toContain('width="66mm" height="66mm"');
  });

  it('holds every text at the place and in the width that it has in print', () => {
    const layout = must(layoutLabel(buildLabel(), loadFaces()));
    const { back } = labelToSvg(layout);
    const drawn = [...back.matchAll(/<text x="([\d.]+)" y="([\d.]+)".*?textLength="([\d.]+)".*?>([^<]*)</g)];
    const texts = layout.back.items.filter((item) => item.kind === 'text');
    expect(drawn).toHaveLength(texts.length);
    drawn.forEach(([, x, y, width, text], index) => {
      const item = texts[index];
      // A blank at an end is drawn as a no-break space, since browsers drop the plain one.
      expect(text?.replaceAll('\u00a0', ' ')).toBe(item?.text);
      expect(Math.abs(Number(x) - (item?.xMm ?? 0))).toBeLessThan(0.001);
      expect(Math.abs(Number(y) - (item?.baselineMm ?? 0))).toBeLessThan(0.001);
      expect(Math.abs(Number(width) - (item?.widthMm ?? 0))).toBeLessThan(0.001);
    });
  });

  it('lets no text of a person break out of its place', () => {
    const { front } = svgOf({ productName: `Salt & "sea" <b>'s` });
    expect(front).toContain('&amp;');
    expect(front).toContain('&quot;sea&quot;');
    expect(front).toContain('&lt;b&gt;&#39;s');
    expect(front).not.toContain('<b>');
  });
});
