import { buildDigitalLinkUri, buildInHouseCode, readGtin } from '../../core/label/index.ts';
import { done, type Result } from '../../core/problem.ts';
import type { CodeWish, LabelWording, PieceCode } from './label-design.ts';

/** What the code of a piece says, with lot and date of the wording. */
export function composeCode(wish: CodeWish, wording: LabelWording, where: string): Result<PieceCode> {
  const date = wording.durability?.date ?? null;
  const lot = wording.batch;
  if (wish.kind === 'in-house') return done({ kind: 'qr', content: buildInHouseCode(lot, date) });
  if (wish.kind === 'ean-13') return composeBars(wish.gtin, where);
  const { domain, gtin, dateAs } = wish;
  const uri = buildDigitalLinkUri({ domain, gtin, lot, date, ...(dateAs && { dateAs }) });
  return uri.ok ? done({ kind: 'qr', content: uri.value }) : at(uri, where);
}

/** A GTIN of twelve digits is one of thirteen with a nought before it (GS1 General Specifications, 3.3.2, from memory). */
function composeBars(gtin: string, where: string): Result<PieceCode> {
  const read = readGtin(gtin, 'gtin');
  if (!read.ok) return at(read, where);
  const digits = read.value.padStart(13, '0');
  if (read.value.length === 12 || read.value.length === 13) return done({ kind: 'ean-13', content: digits });
  return at(
    {
      ok: false,
      problems: [{ code: 'gtin-wrong-length', where: 'gtin', found: gtin, allowed: '12, 13' }],
    },
    where,
  );
}

const at = (
  { problems }: Extract<Result<never>, { ok: false }>,
  where: string,
): Extract<Result<never>, { ok: false }> => ({
  ok: false,
  problems: problems.map((each) => ({ ...each, where: `${where}.${each.where}` })),
});
