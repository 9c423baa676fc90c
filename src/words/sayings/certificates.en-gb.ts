/** What suppliers' papers on lots say, and what is asked of suppliers. */
export const certificateSayings = {
  'lot-without-certificate':
    'No certificate of this lot: it counts with the figures of {material}, as they are remembered or as an earlier paper had them.',
  'lot-certificate-complete':
    'Certificate {reference}{hasDate, select, yes { of {datedOn, date, long}} other {}} replaces the figures of {material} wherever this lot is used.',
  'lot-certificate-partial':
    'Certificate {reference}{hasDate, select, yes { of {datedOn, date, long}} other {}} replaces what it lists of {material} wherever this lot is used; what else is in it counts as before, since the paper does not say that it lists everything.',
  'lot-certificate-figures':
    'Certificate {reference}{hasDate, select, yes { of {datedOn, date, long}} other {}} lists no constituents: they count as with {material}.',
  'ifra-statement-counts':
    '{formula}: certificate {reference} allows at most {mostPercent} % in category {category} (IFRA {edition}).',
  'ifra-statement-of-other':
    '{formula} is of category {category}: the statement of certificate {reference} (lot {lot}) is for category {isFor} and is not used. Ask for one for category {category}.',
} as const;
