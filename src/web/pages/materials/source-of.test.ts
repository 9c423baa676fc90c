import { describe, expect, it } from 'vitest';
import { draftOfMaterial, EMPTY_MATERIAL } from './material-draft.ts';
import { sourceOf } from './source-of.ts';

describe('the source below a field', () => {
  const first = draftOfMaterial({
    ...EMPTY_MATERIAL,
    inciEu: 'Lavandula Angustifolia Oil',
    cas: ['8000-28-0'],
  });
  const sources = { inciEu: 'Glossary of label names', cas: 'Glossary of label names' };

  it('is that of the table as long as its value stands, and goes with it', () => {
    expect(sourceOf(first, first, sources)('inciEu')).toBe('Source: Glossary of label names');
    expect(sourceOf(first, first, sources)('cas')).toBe('Source: Glossary of label names');
    expect(sourceOf({ ...first, inciEu: 'Mine' }, first, sources)('inciEu')).toBeUndefined();
  });

  it('is none where nothing was filled in', () => {
    expect(sourceOf(first, first, sources)('botanical')).toBeUndefined();
    expect(sourceOf(first, first, {})('inciEu')).toBeUndefined();
  });
});
