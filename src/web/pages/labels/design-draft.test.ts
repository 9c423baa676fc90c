import { describe, expect, it } from 'vitest';
import { labels } from '../../../contract/index.ts';
import { draftOfDesign, newPiece, readDesignDraft, withMoved } from './design-draft.ts';

const DETAILS = labels.labelDesignDetails.parse({
  pieces: [
    { id: 'whole', role: 'whole', surface: { shape: 'round', diameterMm: 62 } },
    {
      id: 'band',
      role: 'back',
      surface: { shape: 'wrap', circumferenceMm: 201.5, heightMm: 40, overlapMm: 6 },
      artwork: { attachmentId: 'picture', use: 'background', bleedMm: 2 },
      sheetId: 'sheet',
      elements: ['ingredients', 'batch'],
      letters: { leastMm: 1.2, mostMm: null },
    },
  ],
  languages: ['en', 'de'],
});

describe('the draft of a design', () => {
  it('comes back as it was', () => {
    expect(readDesignDraft(draftOfDesign(DETAILS))).toEqual({ ok: true, value: DETAILS });
  });

  it('says of each measure that cannot be read where it is', () => {
    const draft = draftOfDesign(DETAILS);
    const [first, second] = draft.pieces;
    if (!first || !second) throw new Error('the design has two labels');
    const typed = {
      ...draft,
      spare: '-1',
      pieces: [
        { ...first, surface: { ...first.surface, diameterMm: '6,2' } },
        { ...second, surface: { ...second.surface, heightMm: '' } },
      ],
    };
    const read = readDesignDraft(typed);
    expect(read.ok ? [] : read.problems.map(({ where }) => where)).toEqual([
      'details.pieces[0].surface.diameterMm',
      'details.pieces[1].surface.heightMm',
      'details.spare',
    ]);
  });

  it('does not ask for the measures of a leaflet that is not wished for', () => {
    const draft = draftOfDesign(DETAILS);
    const typed = { ...draft, leafletSurface: { ...draft.leafletSurface, widthMm: '' } };
    expect(readDesignDraft(typed).ok).toBe(true);
    expect(readDesignDraft({ ...typed, moves: 'both' }).ok).toBe(false);
  });

  it('gives each label a name of its own', () => {
    expect(newPiece('sticker', []).id).toBe('sticker');
    expect(newPiece('sticker', ['sticker', 'whole']).id).toBe('sticker-2');
    expect(newPiece('sticker', ['sticker', 'sticker-2']).id).toBe('sticker-3');
  });

  it('moves one thing to the leaflet after the other', () => {
    expect(withMoved('none', 'ingredients')).toBe('ingredients');
    expect(withMoved('ingredients', 'ingredients')).toBe('ingredients');
    expect(withMoved('ingredients', 'precautions')).toBe('both');
    expect(withMoved('both', 'precautions')).toBe('both');
  });
});
