import { describe, expect, it } from 'vitest';
import { draftOfSheet, EMPTY_SHEET, readSheetDraft } from './sheet-draft.ts';

const DETAILS = {
  name: 'Stickers',
  geometry: {
    pageWidthMm: 210,
    pageHeightMm: 297,
    columns: 4,
    rows: 12,
    leftMm: 8.5,
    topMm: 14,
    pitchAcrossMm: 49,
    pitchDownMm: 22.5,
    label: { shape: 'rectangle' as const, widthMm: 46, heightMm: 20, cornerRadiusMm: 2 },
  },
  offsetMm: { across: -0.5, down: 1 },
  isTakenOut: false,
};

describe('the draft of a sheet', () => {
  it('comes back as it was', () => {
    expect(readSheetDraft(draftOfSheet(DETAILS))).toEqual({ ok: true, value: DETAILS });
  });

  it('asks for no distance where there is one column or one row alone', () => {
    const single = { ...draftOfSheet(DETAILS), columns: '1', rows: '1', pitchAcrossMm: '', pitchDownMm: '' };
    expect(readSheetDraft(single)).toMatchObject({
      ok: true,
      value: { geometry: { pitchAcrossMm: 0, pitchDownMm: 0 } },
    });
    expect(readSheetDraft({ ...single, columns: '2' }).ok).toBe(false);
  });

  it('says of an empty one everything that lacks, at its field', () => {
    const read = readSheetDraft(EMPTY_SHEET);
    const wheres = read.ok ? [] : read.problems.map(({ where }) => where);
    expect(wheres).toContain('details.name');
    expect(wheres).toContain('details.geometry.columns');
    expect(wheres).toContain('details.geometry.label.widthMm');
    expect(wheres).not.toContain('details.geometry.label.diameterMm');
    expect(wheres).not.toContain('details.offsetMm.across');
  });
});
