import type { z } from 'zod';
import type { formulas, Market, stock } from '../contract/index.ts';
import type { Contribution, ExpandedFormula } from '../core/formula/index.ts';
import type { CompositionAnswer } from '../core/safety/index.ts';
import type { CertifiedLot } from './with-certificate.ts';

export type MaterialDetails = stock.MaterialDetails;
export type RevisionDetails = formulas.RevisionDetails;
export type ReportDetails = z.output<typeof formulas.reportDetails>;

/** The revision that is judged, as far as its sentences name it. */
export interface JudgedRevision {
  readonly id: string;
  readonly number: number;
}

export interface JudgedFormula {
  readonly id: string;
  readonly name: string;
  /** base or mixture. */
  readonly kind: string;
}

/** What a revision comes to once its bases are opened: materials, and what each brings in. */
export interface OpenedRevision {
  readonly revision: JudgedRevision;
  readonly details: Omit<RevisionDetails, 'lines' | 'steps'>;
  readonly formula: JudgedFormula;
  /** Bases that its own lines name. */
  readonly baseIds: readonly string[];
  readonly expanded: ExpandedFormula;
  readonly materials: ReadonlyMap<string, MaterialDetails>;
  /** What the figures are of: each lot that has a certificate, and each material as far as no lot of it has one. */
  readonly kinds: readonly MaterialKind[];
  /** Each told by the names that the workshop calls its materials. */
  readonly contributions: readonly Contribution[];
}

/** A material as it is known, or as the certificate of one lot has it. */
export interface MaterialKind {
  readonly materialId: string;
  readonly details: MaterialDetails;
  readonly lot: CertifiedLot | null;
}

/** An assessor's report, with the names of the materials that it has ranges for. */
export interface KnownReport {
  readonly row: { readonly id: string };
  readonly details: ReportDetails;
  readonly materialNames: ReadonlyMap<string, string>;
}

/** What a named person decided on an unknown. */
export interface SignedDecision {
  readonly entry_id: string;
  readonly unknown_key: string;
  readonly verdict: string;
  readonly reason: string;
  readonly upon: string;
  readonly person_name: string;
  readonly happened_at: string;
}

/** One report, or none, with the markets that it is asked for and what came of it. */
export interface CheckedGroup {
  readonly report: KnownReport | undefined;
  /** No report covers it here, and this one would if it did not name other products. */
  readonly ofOthers: KnownReport | undefined;
  readonly markets: readonly Market[];
  readonly answer: CompositionAnswer;
}

/** A product that is filled from the formula, or is to be. */
export interface AskedProduct {
  readonly id: string;
  readonly name: string;
}

export interface Checked {
  readonly opened: OpenedRevision;
  /** Products that it is judged for, where they are known. */
  readonly products: readonly AskedProduct[];
  readonly today: string;
  readonly groups: readonly CheckedGroup[];
  /** By the calculation's key of one market. */
  readonly decisions: ReadonlyMap<string, SignedDecision>;
  /** Decisions that no longer count, since what they were taken upon has changed; by the same key. */
  readonly lapsed: ReadonlyMap<string, SignedDecision>;
  /** Everything that was ever decided, by the same key. */
  readonly everDecided: ReadonlyMap<string, readonly SignedDecision[]>;
}
