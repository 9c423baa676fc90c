import type { SourcedRow } from './sourced-row.ts';

export type LabelMarket = 'EU' | 'NI' | 'GB' | 'US';

/** One rule on what a label, its packaging, the notification or the product file must hold. */
export interface LabelRule extends SourcedRow {
  readonly markets: readonly LabelMarket[];
  /** What the rule is about: `responsible-person`, `nominal-content`, `ingredients` ... */
  readonly element: string;
  readonly rule: string;
  /** Absent: the rule is not about a place. */
  readonly onContainer?: boolean;
  readonly onPackaging?: boolean;
  /** Order of the elements in Article 19. */
  readonly order?: number;
  /** Heading number in the safety report or the product information file. */
  readonly number?: number;
  readonly note?: string;
  readonly from?: string;
  readonly until?: string;
  readonly requiredForPlacingFrom?: string;
  readonly requiredForMakingAvailableFrom?: string;
  readonly exemptions?: readonly string[];
  readonly elements?: readonly string[];
  readonly movableElements?: readonly string[];
  readonly thresholdMonths?: number;
  readonly thresholdPercent?: number;
  readonly thresholdLeaveOnPercent?: number;
  readonly thresholdRinseOffPercent?: number;
  readonly thresholdUsd?: number;
  /** `over`: strictly above counts; `below`: must be strictly below. */
  readonly thresholdComparison?: 'over' | 'below';
  /** Order of ingredients is free `below` or `at-most` the threshold. */
  readonly freeWhen?: 'below' | 'at-most';
  readonly minHeightMm?: number;
  readonly minHeightInch?: number;
  readonly smallPanelMinHeightInch?: number;
  readonly smallPanelSquareInch?: number;
  readonly days?: number;
  readonly businessDays?: number;
  readonly keepYears?: number;
  readonly keepYearsSmallBusiness?: number;
}
