import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildDigitalLinkUri, type DigitalLinkQuestion } from './digital-link-uri.ts';

const ask = (change: Partial<DigitalLinkQuestion> = {}) =>
  buildDigitalLinkUri({
    domain: 'larkfold.example',
    gtin: '9521234543213',
    lot: 'ABC123',
    date: '2026-12-31',
    ...change,
  });
const uriOf = (change: Partial<DigitalLinkQuestion> = {}): string => {
  const built = ask(change);
  return built.ok ? built.value : JSON.stringify(built.problems);
};

describe('buildDigitalLinkUri', () => {
  // The form of a published example: https://id.gs1.org/01/09521234543213/10/ABC123?17=261231
  // (GTIN 09521234543213; batch ABC123; expiration date 31 December 2026), on a domain of the maker's own.
  it('writes the published example, on another domain', () => {
    expect(uriOf()).toBe('https://larkfold.example/01/09521234543213/10/ABC123?17=261231');
    expect(uriOf({ domain: 'id.gs1.org' })).toBe('https://id.gs1.org/01/09521234543213/10/ABC123?17=261231');
  });

  it('takes a path of the domain, and a scheme that was typed with it', () => {
    expect(uriOf({ domain: 'https://Larkfold.Example/products/', date: null })).toBe(
      'https://larkfold.example/products/01/09521234543213/10/ABC123',
    );
  });

  it('writes the date as best before where that is said', () => {
    expect(uriOf({ dateAs: '15' })).toContain('?15=261231');
  });

  it('encodes what a path cannot carry, and gives it back to whoever decodes', () => {
    expect(uriOf({ lot: 'A/1%' })).toContain('/10/A%2F1%25?');
    expect(uriOf({ lot: "(B)*!'" })).toContain('/10/%28B%29%2A%21%27?');
    const characters = [...`!"%&'()*+,-./0123456789:;<=>?ABYZ_abyz`];
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...characters), minLength: 1, maxLength: 20 }), (lot) => {
        // Dots alone are refused: whoever reads an address takes them for a step up.
        fc.pre(!/^\.{1,2}$/.test(lot));
        const { pathname, searchParams } = new URL(uriOf({ lot }));
        expect(decodeURIComponent(pathname.split('/')[4] ?? '')).toBe(lot);
        expect(searchParams.get('17')).toBe('261231');
      }),
    );
  });

  it('takes a lot of 20 characters, not of 21 nor none', () => {
    expect(ask({ lot: 'x'.repeat(20) }).ok).toBe(true);
    for (const lot of ['x'.repeat(21), '', 'ä', 'A 1', '.', '..'])
      expect(ask({ lot })).toMatchObject({ ok: false, problems: [{ code: 'link-lot-wrong', found: lot }] });
  });

  it('names everything that is wrong at once', () => {
    const built = ask({ domain: 'nowhere', gtin: '1', lot: '', date: '2026-02-30' });
    expect(built.ok ? [] : built.problems.map(({ code }) => code)).toEqual([
      'link-domain-wrong',
      'gtin-wrong-length',
      'link-lot-wrong',
      'link-date-wrong',
    ]);
  });

  it('refuses a domain that is none', () => {
    for (const domain of [
      '',
      'a b.example',
      'http://larkfold.example',
      '-a.example',
      'larkfold.example/a?b',
      '10.0.0.1',
    ])
      expect(ask({ domain })).toMatchObject({ ok: false, problems: [{ code: 'link-domain-wrong' }] });
  });
});
