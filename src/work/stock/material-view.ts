import type { z } from 'zod';
import type { stock } from '../../contract/index.ts';
import { type ConstituentRow, listConstituents, type MaterialRow, type Reader } from '../../storage/index.ts';

export type MaterialView = z.output<typeof stock.material>;
export type MaterialDetails = stock.MaterialDetails;

/** Materials as the pages show them: two queries however many there are. */
export async function viewMaterials(db: Reader, rows: readonly MaterialRow[]): Promise<MaterialView[]> {
  const constituents = await listConstituents(
    db,
    rows.map((row) => row.id),
  );
  const ofMaterial = new Map<string, ConstituentRow[]>();
  for (const row of constituents) {
    const known = ofMaterial.get(row.material_id);
    if (known) known.push(row);
    else ofMaterial.set(row.material_id, [row]);
  }
  return rows.map((row) => ({
    id: row.id,
    version: row.version,
    details: {
      // Nobody was asked for it at first.
      isNano: false,
      ...(JSON.parse(row.details) as Omit<MaterialDetails, 'constituents' | 'isNano'>),
      constituents: (ofMaterial.get(row.id) ?? []).map(viewConstituent),
    },
  }));
}

const viewConstituent = (row: ConstituentRow): MaterialDetails['constituents'][number] => ({
  name: row.name,
  cas: row.cas,
  leastPercent: row.least_percent,
  typicalPercent: row.typical_percent,
  mostPercent: row.most_percent,
  source: row.source,
  confidence: row.confidence as MaterialDetails['constituents'][number]['confidence'],
});

export function rowsOfMaterial(id: string, details: MaterialDetails) {
  const { constituents, ...rest } = details;
  return {
    material: { id, kind: details.kind, name: details.name, details: JSON.stringify(rest), version: 1 },
    constituents: constituents.map((one, position) => ({
      material_id: id,
      position,
      name: one.name,
      cas: one.cas,
      least_percent: one.leastPercent,
      typical_percent: one.typicalPercent,
      most_percent: one.mostPercent,
      source: one.source,
      confidence: one.confidence,
    })),
  };
}
