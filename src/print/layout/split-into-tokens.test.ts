import { describe, expect, it } from 'vitest';
import { splitIntoTokens } from './split-into-tokens.ts';

const textsOf = (text: string): string[][] =>
  splitIntoTokens([{ text, weight: 'regular' }]).map((line) => line.map((token) => token.text));

describe('splitIntoTokens', () => {
  it('parts words at blanks, and lines where the writer ended them', () => {
    expect(textsOf('Larkfold Butters,\n3 Mill Yard')).toEqual([
      ['Larkfold', 'Butters,'],
      ['3', 'Mill', 'Yard'],
    ]);
  });

  it('keeps a figure with its unit, and a number grouped by thousands together', () => {
    expect(textsOf('fill 80 g at 25 °C, 1 840 g in all')).toEqual([
      ['fill', '80 g', 'at', '25 °C,', '1 840 g', 'in', 'all'],
    ]);
    expect(textsOf('12 months and 2 gel tubs')).toEqual([['12', 'months', 'and', '2', 'gel', 'tubs']]);
  });

  it('never tears a postcode', () => {
    // Shapes of British and Irish postcodes, from memory; the places are invented.
    expect(textsOf('Hollinsby HX0 0ZZ, United Kingdom')).toEqual([
      ['Hollinsby', 'HX0 0ZZ,', 'United', 'Kingdom'],
    ]);
    expect(textsOf('Testham W1A 0AX')).toEqual([['Testham', 'W1A 0AX']]);
    expect(textsOf('Testport BT99 9ZZ')).toEqual([['Testport', 'BT99 9ZZ']]);
    expect(textsOf('Dublin D02 X285')).toEqual([['Dublin', 'D02 X285']]);
  });

  it('takes nothing else for a postcode', () => {
    expect(textsOf('CO-0418 9AB and B12 in all')).toEqual([['CO-0418', '9AB', 'and', 'B12', 'in', 'all']]);
  });

  it('may break a long chemical name after a slash, but no batch number and no date', () => {
    expect(textsOf('Caprylic/Capric CO-0418 05/2027')).toEqual([
      ['Caprylic/', 'Capric', 'CO-0418', '05/2027'],
    ]);
  });

  it('shows the hyphen of a soft hyphen only where the line breaks', () => {
    const [tokens] = splitIntoTokens([{ text: 'moistur\u00adiser', weight: 'regular' }]);
    expect(tokens).toEqual([
      { text: 'moistur', weight: 'regular', joiner: '', ending: '-' },
      { text: 'iser', weight: 'regular', joiner: '', ending: '' },
    ]);
  });

  it('composes letters, and takes tabs, line ends of any system and marks without ink as what they are', () => {
    expect(textsOf('Ece\u0301\ttwo\r\nthree\ufeff')).toEqual([['Ecé', 'two'], ['three']]);
  });

  it('gives an empty line for an empty text', () => {
    expect(textsOf('')).toEqual([[]]);
  });
});
