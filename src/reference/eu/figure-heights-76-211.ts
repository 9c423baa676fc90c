/**
 * Smallest height of the figures of the net quantity: Directive 76/211/EEC, Annex I 3.1, with the exact bands of the
 * German Fertigpackungsverordnung. Up to and including the upper bound: 50 g is 2 mm, 50.1 g is 3 mm.
 */
import type { Band, ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface FigureHeightRow extends SourcedRow {
  readonly nominalGramsOrMl: Band;
  readonly minHeightMm: number;
}

export const figureHeights: readonly FigureHeightRow[] = [
  {
    id: 'figures-over-0', nominalGramsOrMl: { over: 0, upTo: 50 }, minHeightMm: 2, source: 'fpackv',
    alsoSources: ['fr-arr-1978', 'eu-76-211'], confidence: 'read',
  },
  {
    id: 'figures-over-50', nominalGramsOrMl: { over: 50, upTo: 200 }, minHeightMm: 3, source: 'fpackv',
    alsoSources: ['fr-arr-1978', 'eu-76-211'], confidence: 'read',
  },
  {
    id: 'figures-over-200', nominalGramsOrMl: { over: 200, upTo: 1000 }, minHeightMm: 4, source: 'fpackv',
    alsoSources: ['fr-arr-1978', 'eu-76-211'], confidence: 'read',
  },
  {
    id: 'figures-over-1000', nominalGramsOrMl: { over: 1000, upTo: null }, minHeightMm: 6, source: 'fpackv',
    alsoSources: ['fr-arr-1978', 'eu-76-211'], confidence: 'read',
  },
];

export const figureHeightSources: readonly ReferenceSource[] = [
  {
    id: 'eu-76-211',
    title: 'Council Directive 76/211/EEC, figures height and e-mark, as summarised by the US mission to the EU',
    where: 'usda-eu.org', read: true,
  },
  {
    id: 'fpackv',
    title: 'German Fertigpackungsverordnung, sections 9 and 38 (same tables as Directive 76/211/EEC, with exact bands)',
    where: 'German federal law text', read: true,
  },
  {
    id: 'fr-arr-1978', title: 'Arrete du 20 octobre 1978 (preemballages), articles 1, 2, 8, 10, 11',
    where: 'legifrance.gouv.fr', read: true,
  },
];
