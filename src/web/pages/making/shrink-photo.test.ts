import { describe, expect, it } from 'vitest';
import { fitInto, shrinkTo } from './shrink-photo.ts';

const CAMERA = { width: 4000, height: 3000 };
/** As large as a coder makes it: so many bytes a pixel, less of it at less quality. */
const coder = (bytesPerPx: number) => {
  const drawn: { width: number; quality: number }[] = [];
  return {
    drawn,
    draw: async ({ width, height }: { width: number; height: number }, quality: number) => {
      drawn.push({ width, quality });
      return new Blob([new Uint8Array(Math.round(width * height * bytesPerPx * quality))]);
    },
  };
};

describe('a photograph that is made smaller', () => {
  it('keeps its shape, and is never blown up', () => {
    expect(fitInto(CAMERA, 1600)).toEqual({ width: 1600, height: 1200 });
    expect(fitInto({ width: 3000, height: 4000 }, 1600)).toEqual({ width: 1200, height: 1600 });
    expect(fitInto({ width: 640, height: 480 }, 1600)).toEqual({ width: 640, height: 480 });
    expect(fitInto({ width: 9000, height: 1 }, 1600)).toEqual({ width: 1600, height: 1 });
  });

  it('is as sharp as fits: first less quality, then fewer dots', async () => {
    const easy = coder(0.2);
    expect((await shrinkTo(CAMERA, easy.draw))?.size).toBeLessThanOrEqual(400_000);
    expect(easy.drawn).toEqual([{ width: 1600, quality: 0.85 }]);
    const hard = coder(0.8);
    expect((await shrinkTo(CAMERA, hard.draw))?.size).toBeLessThanOrEqual(400_000);
    expect(hard.drawn.at(-1)).toEqual({ width: 1200, quality: 0.45 });
  });

  it('is given up where nothing helps, or nothing can be drawn', async () => {
    expect(await shrinkTo(CAMERA, coder(0.05).draw, 100)).toBeNull();
    expect(await shrinkTo(CAMERA, async () => null)).toBeNull();
  });
});
