import { done, type Problem, problem, type Result } from '../problem.ts';
import { readGtin } from './gtin.ts';
import { isCalendarDate } from './is-calendar-date.ts';

export interface DigitalLinkQuestion {
  /** The maker's own, such as `larkfold.example`; a path of its own may follow. */
  readonly domain: string;
  readonly gtin: string;
  readonly lot: string;
  /** YYYY-MM-DD; null where the label has no date. */
  readonly date: string | null;
  /** Application identifier of the date: 15 best before, 17 expiration. */
  readonly dateAs?: '15' | '17';
}

/**
 * Application identifier 10: up to 20 characters of GS1's set 82 (GS1 General Specifications, 3.4.1 and figure 7.11-1, from
 * memory). A lot of dots alone is left out: whoever reads an address takes it for a step up (RFC 3986, 5.2.4).
 */
const LOT = /^(?!\.{1,2}$)[!"%&'()*+,\-./0-9:;<=>?A-Z_a-z]{1,20}$/;
/** A host name by RFC 1123 with at least two labels, then path elements that need no encoding. */
const DOMAIN =
  /^(?=.{4,200}$)(?:[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?\.)+[a-z][a-z0-9-]{0,61}[a-z0-9](?:\/[A-Za-z0-9._~-]+)*$/;

/**
 * GS1 Digital Link URI on a domain of the maker's own: `https://domain/01/GTIN/10/LOT?17=YYMMDD`, the GTIN in 14 digits.
 * Everything but the unreserved characters of RFC 3986 is percent-encoded, in capitals.
 * Source: GS1 Digital Link Standard: URI Syntax (key, key qualifier, then data attributes as query), as its form is set out in
 * public manuals of barcode writers, read; identifiers 01, 10, 15 and 17 of the GS1 General Specifications.
 */
export function buildDigitalLinkUri(question: DigitalLinkQuestion): Result<string> {
  const { lot, date, dateAs = '17' } = question;
  const domain = question.domain
    .trim()
    .replace(/^https:\/\//i, '')
    .replace(/\/$/, '');
  const host = domain.replace(/^[^/]+/, (name) => name.toLowerCase());
  const gtin = readGtin(question.gtin, 'gtin');
  const problems: Problem[] = [
    ...(DOMAIN.test(host) ? [] : [problem('link-domain-wrong', 'domain', { found: question.domain })]),
    ...(gtin.ok ? [] : gtin.problems),
    ...(LOT.test(lot) ? [] : [problem('link-lot-wrong', 'lot', { found: lot, allowed: 20 })]),
    ...(date === null || isDate(date) ? [] : [problem('link-date-wrong', 'date', { found: date })]),
  ];
  if (!gtin.ok || problems.length > 0) return { ok: false, problems };
  const query = date === null ? '' : `?${dateAs}=${date.replaceAll('-', '').slice(2)}`;
  return done(`https://${host}/01/${gtin.value.padStart(14, '0')}/10/${encodeValue(lot)}${query}`);
}

/** The six digits of the identifier stand for 49 years back to 50 ahead; a label's date lies well inside 2000 to 2099. */
const isDate = (text: string): boolean => text.startsWith('20') && isCalendarDate(text);

/** encodeURIComponent leaves ! ' ( ) * as they are, which RFC 3986 reserves. */
const encodeValue = (text: string): string =>
  encodeURIComponent(text).replace(
    /[!'()*]/g,
    (character) => `%${character.charCodeAt(0).toString(16).toUpperCase()}`,
  );
