import {
  type AskedProduct,
  type Checked,
  judgeSale,
  type SaleAnswer,
  type ToldReason,
} from '../../check/index.ts';
import type { Market, Saying } from '../../contract/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { type Exact, exact, largest, smallest } from '../../core/quantity/index.ts';
import type { Context } from '../context.ts';
import { runCheck } from './run-check.ts';

export interface SaleCheck {
  readonly answer: SaleAnswer;
  /** Everything that stops it, or that somebody still has to decide; empty where it may be made for sale. */
  readonly hindrances: readonly Saying[];
  /** Material id: so many times its share every limit and the report would still allow; absent: nothing binds it. */
  readonly headroom: ReadonlyMap<string, Exact>;
  /** Material id: so small a part of its share the report would still accept; absent: it asks for none. */
  readonly footroom: ReadonlyMap<string, Exact>;
}

/** May a batch of this revision be made for sale in these markets today? */
export async function checkForSale(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  products: readonly AskedProduct[] = [],
): Promise<Result<SaleCheck>> {
  const checked = await runCheck(context, revisionId, markets, { products });
  return checked.ok ? done(judgeForSale(checked.value)) : checked;
}

/** The same of a check that was run already. */
export function judgeForSale(checked: Checked): SaleCheck {
  const { answer, reasons } = judgeSale(checked);
  return {
    answer,
    hindrances: reasons.filter(isHindrance).map((reason) => reason.says),
    headroom: findHeadroom(checked),
    footroom: findFootroom(checked),
  };
}

/** What the report leaves out of several products is only to be seen of a formula; of what is filled it stops that one. */
const isHindrance = ({ blocks, says }: ToldReason): boolean =>
  blocks !== 'no' || says.code === 'sale-report-leaves-product';

/** With the rest as it is: then its share falls by less than its amount, and is never below what the report asks for. */
function findFootroom({ groups }: Checked): Map<string, Exact> {
  const room = new Map<string, Exact>();
  for (const { materialId, leastPercent = 0, percent } of groups.flatMap(
    ({ answer }) => answer.report?.materials ?? [],
  )) {
    if (leastPercent <= 0 || percent <= 0) continue;
    const factor = exact(leastPercent).div(percent);
    room.set(materialId, largest(room.get(materialId) ?? factor, factor));
  }
  return room;
}

/** Taken as if everything that brings a substance in grew together: never more than the limit allows. */
function findHeadroom({ opened, groups }: Checked): Map<string, Exact> {
  const room = new Map<string, Exact>();
  const bind = (materialId: string, factor: Exact): void => {
    const known = room.get(materialId);
    room.set(materialId, known ? smallest(known, factor) : factor);
  };
  const idsOf = (names: readonly string[]) =>
    [...opened.materials].filter(([, details]) => names.includes(details.name)).map(([id]) => id);
  for (const { answer } of groups) {
    for (const row of answer.markets.flatMap((market) => market.verdicts)) {
      if (row.limitPercent === undefined || row.percent <= 0) continue;
      const factor = exact(row.limitPercent).div(row.percent);
      for (const id of idsOf(row.fromMaterials ?? [])) bind(id, factor);
    }
    for (const row of answer.supplier)
      if (row.percent > 0) bind(row.materialId, exact(row.limitPercent).div(row.percent));
    for (const row of answer.report?.materials ?? [])
      if (row.mostPercent !== undefined && row.percent > 0)
        bind(row.materialId, exact(row.mostPercent).div(row.percent));
  }
  return room;
}
