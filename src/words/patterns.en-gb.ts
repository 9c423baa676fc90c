/** How a text has to be written, for each pattern of the contract and the catalogue (registry.test.ts finds a missing one). */
export const patterns: Readonly<Record<string, string>> = {
  '/^[A-Za-z0-9-]{1,64}$/': 'up to 64 letters, digits and hyphens',
  '/^[A-Z]{3}$/': 'the three capital letters of a currency, such as GBP',
  '/^[A-Z]{2}$/': 'the two capital letters of a country, such as GB',
  '/^[A-Z]{2,4}$/': 'two to four capital letters',
  '/^(1|2|3|4|5A|5B|5C|5D|6|7A|7B|8|9|10A|10B|11A|11B|12)$/': 'an IFRA category, such as 5A',
  '/^\\d{2,7}-\\d{2}-\\d$/': 'a CAS number, such as 78-70-6',
  '/^\\d{4,8}$/': 'four to eight digits',
  '/^\\d{8}$/': 'eight digits',
};
