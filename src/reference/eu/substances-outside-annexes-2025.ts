/**
 * Substances that makers ask about and that stand in no annex, or only in a scientific opinion.
 * A selection that makers with natural materials meet. The sources stand in restricted-substances-2025.
 */
import type { RestrictedSubstance } from '../restricted-substance.ts';

export const substancesOutsideAnnexes: readonly RestrictedSubstance[] = [
  {
    id: 'tea-tree', name: 'Melaleuca Alternifolia Leaf Oil (tea tree oil)',
    aliases: ['Melaleuca Alternifolia Leaf Oil', 'Tea tree oil', 'Melaleuca oil'], cas: ['68647-73-4', '85085-48-9'],
    plantPart: ['leaf'], kind: 'restricted',
    rules: [
      {
        id: 'tea-tree-eu-shampoo', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'hair', productType: 'shampoo',
        quantity: 'max', value: 2, onlyIf: 'adults-iso-4730-no-spray', force: 'opinion', source: 'sccs1681',
        confidence: 'read', note: 'Only for the defended anti-microbial and anti-seborrhoeic uses.',
      },
      {
        id: 'tea-tree-eu-shower-gel', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'body',
        productType: 'shower-gel', quantity: 'max', value: 1, onlyIf: 'adults-iso-4730-no-spray', force: 'opinion',
        source: 'sccs1681', confidence: 'read',
        note: 'Only for the defended anti-microbial and anti-seborrhoeic uses.',
      },
      {
        id: 'tea-tree-eu-face-wash', markets: ['EU', 'NI'], use: 'rinse-off', bodyPart: 'face',
        productType: 'face-wash', quantity: 'max', value: 1, onlyIf: 'adults-iso-4730-no-spray', force: 'opinion',
        source: 'sccs1681', confidence: 'read',
        note: 'Only for the defended anti-microbial and anti-seborrhoeic uses.',
      },
      {
        id: 'tea-tree-eu-face-cream', markets: ['EU', 'NI'], use: 'leave-on', bodyPart: 'face',
        productType: 'face-cream', quantity: 'max', value: 0.1, onlyIf: 'adults-iso-4730-no-spray', force: 'opinion',
        source: 'sccs1681', confidence: 'read',
        note: 'Only for the defended anti-microbial and anti-seborrhoeic uses.',
      },
      {
        id: 'tea-tree-eu-other', markets: ['EU', 'NI'],
        exceptProductTypes: ['shampoo', 'shower-gel', 'face-wash', 'face-cream'], quantity: 'max', value: null,
        force: 'opinion', source: 'sccs1681', confidence: 'read',
        note: 'Not among the uses supported; body butter and balm are not.',
      },
    ],
    source: 'sccs1681', confidence: 'read',
    note: 'An opinion, not law. No Annex entry up to December 2025 (cosing2, cosing3). RAC 2023 Repr. 1B (rac_tto); the EU classification act and any entry of 2026 were not found; if classified without exemption it becomes prohibited. Great Britain: HSE final opinion of 25 August 2025 without reproductive toxicity (hse_tto), no rule known. Carries methyl eugenol traces and terpinene (peroxides).',
  },
  {
    id: 'tocopherol', name: 'Tocopherol, Tocopheryl Acetate', aliases: ['Tocopherol', 'Tocopheryl Acetate'],
    cas: ['59-02-9', '10191-41-0', '7695-91-2'], kind: 'naming-only', rules: [], source: 'cosing3',
    confidence: 'read', note: 'No Annex II or III entry in the lists read.',
  },
  {
    id: 'estragole', name: 'Estragole (methyl chavicol)', aliases: ['Methyl chavicol', '4-Allylanisole'],
    cas: ['140-67-0'], kind: 'naming-only', rules: [], source: 'memory', confidence: 'memory',
    note: 'No Annex III limit known (memory); IFRA limits it. Basil, tarragon, fennel, anise.',
  },
  {
    id: 'mica', name: 'Mica', cas: ['12001-26-2'], kind: 'colourant', rules: [], source: 'cosing2',
    confidence: 'memory',
    note: "Not found as a colour index number in the Annex IV list read (2024); declared as 'Mica' in the EU; pigments on it by CI number (e.g. CI 77891, CI 77491). US label: Mica; colour additive listed by the FDA (memory).",
  },
  {
    id: 'prohibited-traces', name: 'Traces of prohibited substances (e.g. metals in clays)',
    aliases: ['Lead', 'Nickel', 'Arsenic', 'Mercury', 'Cadmium'], cas: [], kind: 'prohibited',
    rules: [
      {
        id: 'prohibited-traces-eu-any', markets: ['EU', 'NI'], quantity: 'prohibited',
        onlyIf: 'trace-avoidable-or-unsafe', source: 'memory', confidence: 'memory', note: 'Article 17.',
      },
      {
        id: 'prohibited-traces-gb-any', markets: ['GB'], quantity: 'prohibited', onlyIf: 'trace-avoidable-or-unsafe',
        source: 'memory', confidence: 'memory',
        note: 'Retained entry, taken as unchanged; not looked up entry by entry.',
      },
    ],
    source: 'memory', confidence: 'memory',
    note: 'Small unintended amounts from impurities are allowed only if technically unavoidable under good manufacturing practice and the product stays safe. Keep heavy-metal certificates for clays and pigments.',
  },
];
