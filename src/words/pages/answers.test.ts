import { describe, expect, it } from 'vitest';
import { answerWords } from './answers.en-gb.ts';

describe('has it got nuts in, in words', () => {
  it('says what is in it with its materials, then what is not, then what nobody has said', () => {
    expect(
      answerWords.sentence([
        { flag: 'tree-nut', verdict: 'contains', materials: ['Shea butter', 'Almond oil'], byName: [] },
        { flag: 'peanut', verdict: 'free', materials: [], byName: [] },
        { flag: 'milk', verdict: 'free', materials: [], byName: [] },
        { flag: 'palm', verdict: 'unknown', materials: ['Old scent'], byName: [] },
      ]),
    ).toBe(
      'In it: tree nut (Shea butter, Almond oil). Not in it: peanut or milk. Not known: palm, since nobody has said what Old scent comes from.',
    );
  });

  it('says of a name that tells more than its entry which material it is', () => {
    expect(
      answerWords.sentence([
        { flag: 'peanut', verdict: 'free', materials: [], byName: [] },
        {
          flag: 'daisy-family',
          verdict: 'contains',
          materials: ['Sunflower oil'],
          byName: ['Sunflower oil'],
        },
      ]),
    ).toBe('In it: plants of the daisy family (Sunflower oil by its name). Not in it: peanut.');
  });

  it('leaves out what there is nothing to say of', () => {
    expect(answerWords.sentence([{ flag: 'bee', verdict: 'free', materials: [], byName: [] }])).toBe(
      'Not in it: bee products.',
    );
  });

  it('is one text for a shop page, traces and all', () => {
    const text = answerWords.text('Orange butter', 'OC-0007', 'Shea, Limonene', [
      { flag: 'peanut', verdict: 'free', materials: [], byName: [] },
    ]);
    expect(text.split('\n')).toEqual([
      'Orange butter, batch OC-0007',
      'Ingredients: Shea, Limonene',
      'Not in it: peanut.',
      answerWords.traces,
    ]);
  });
});
