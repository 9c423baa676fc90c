const names = new Intl.DisplayNames(['en-GB'], { type: 'region' });

/** `IE` becomes Ireland. */
export const nameCountry = (code: string): string => names.of(code) ?? code;
