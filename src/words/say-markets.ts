/** As a sentence names them. */
const MARKETS: Readonly<Record<string, string>> = {
  GB: 'Great Britain',
  NI: 'Northern Ireland',
  EU: 'the European Union',
  US: 'the United States',
};

const inWords = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** `GB, NI` becomes `Great Britain and Northern Ireland`; what is no list of markets stays as it is. */
export function sayMarkets(text: string): string {
  const names = text.split(', ').map((code) => MARKETS[code]);
  const known = names.filter((name) => name !== undefined);
  return known.length === names.length ? inWords.format(known) : text;
}

/** Parameters of a sentence that hold markets end in this word. */
export const isOfMarkets = (parameter: string): boolean => /markets?$/i.test(parameter);
