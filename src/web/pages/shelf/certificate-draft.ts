import { makeId } from '../../api/make-id.ts';
import type { AnswerOf, WriteOf } from '../../api/shapes.ts';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';

type Body = WriteOf<'saveLotCertificate'>['body'];
export type Certificate = AnswerOf<'listLotCertificates'>['certificates'][number];

export interface ConstituentDraft {
  readonly key: string;
  readonly name: string;
  readonly cas: string;
  readonly least: string;
  readonly measured: string;
  readonly most: string;
}
export interface StatementDraft {
  readonly key: string;
  readonly category: string;
  readonly edition: string;
  readonly most: string;
}
export interface CertificateDraft {
  readonly reference: string;
  readonly datedOn: string;
  readonly constituents: readonly ConstituentDraft[];
  readonly isComplete: boolean;
  readonly peroxide: string;
  readonly measuredOn: string;
  readonly statements: readonly StatementDraft[];
  readonly remark: string;
}

export const emptyConstituent = (): ConstituentDraft => ({
  key: makeId(),
  name: '',
  cas: '',
  least: '',
  measured: '',
  most: '',
});

export const emptyStatement = (): StatementDraft => ({
  key: makeId(),
  category: '5A',
  edition: '51',
  most: '',
});

export const emptyCertificate = (): CertificateDraft => ({
  reference: '',
  datedOn: '',
  constituents: [emptyConstituent()],
  isComplete: false,
  peroxide: '',
  measuredOn: '',
  statements: [],
  remark: '',
});

/** A paper as it stands, to be corrected. */
export const draftOf = ({ reference, datedOn, details }: Certificate): CertificateDraft => ({
  reference,
  datedOn: datedOn ?? '',
  constituents: details.constituents.map(({ name, cas, leastPercent, typicalPercent, mostPercent }) => ({
    key: makeId(),
    name,
    cas: cas ?? '',
    least: leastPercent,
    measured: typicalPercent,
    most: mostPercent,
  })),
  isComplete: details.isComplete,
  peroxide: details.peroxide?.mmolPerLitre ?? '',
  measuredOn: details.peroxide?.measuredOn ?? '',
  statements: details.ifra.map(({ category, edition, mostPercent: most }) => ({
    key: makeId(),
    category,
    edition,
    most,
  })),
  remark: details.remark,
});

/** What the contract asks for: a row in which nothing is typed is none. */
export function bodyOf(draft: CertificateDraft, file: Body['file'], insteadOf: string | null): Body {
  const constituents = draft.constituents
    .filter(({ name, cas, least, measured, most }) => `${name}${cas}${least}${measured}${most}`.trim() !== '')
    .map(({ name, cas, least, measured, most }) => ({
      name,
      cas: cas.trim() === '' ? null : cas,
      leastPercent: typedDecimalOrNull(least),
      typicalPercent: typedDecimalOrNull(measured),
      mostPercent: typedDecimalOrNull(most),
    }));
  return {
    reference: draft.reference,
    datedOn: draft.datedOn === '' ? null : draft.datedOn,
    details: {
      constituents,
      isComplete: draft.isComplete,
      peroxide:
        draft.peroxide.trim() === ''
          ? null
          : {
              mmolPerLitre: typedDecimal(draft.peroxide),
              measuredOn: draft.measuredOn === '' ? null : draft.measuredOn,
            },
      ifra: draft.statements.map(({ category, edition, most }) => ({
        category,
        edition,
        mostPercent: typedDecimal(most),
      })),
      remark: draft.remark,
      insteadOf,
    },
    file: file ?? null,
  };
}
