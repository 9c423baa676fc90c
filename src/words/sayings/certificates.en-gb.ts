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

  'memory-limit':
    '{substance} {isOver, select, yes {may reach} other {reaches at most}} {percent} % of {boundPercent} % allowed ({rule}).',
  'memory-name':
    '{substance} {isOver, select, yes {is named: it may reach} other {is not named: it reaches at most}} {percent} %, and is named over {boundPercent} %.',
  'ask-composition': 'Ask for the composition of {materials}, with the least and the most of {substance}.',
  'ask-ifra': 'Ask for the IFRA certificate of {materials} for category {categories}.',
  'ask-look-up': 'Look it up where it is printed: {rule}.',
  'ask-peroxide':
    'Ask for the peroxide value of the lot that brings in {substance}, with the day it was measured.',
  'ask-figure':
    'Ask for the figure that the rule counts{hasWhat, select, yes { ({asWhat})} other {}} of {substance}.',
  'ask-amount': 'Ask how much {substance} there is at the most, in each material that has it.',
  'ask-everything': 'Ask for a paper that lists everything in {material} that has a limit or must be named.',
  'ask-identity': 'Ask which plant, which part of it and which process {substance} is of.',
  'shelf-yes': 'With the lots on the shelf, by the certificates of {materials}: it may be made for sale.',
  'shelf-no':
    'With the lots on the shelf, by the certificates of {materials}: it may not be made for sale. {which}',
  'shelf-decide':
    'With the lots on the shelf, by the certificates of {materials}: it may be made for sale once {n, plural, one {# question is} other {# questions are}} decided.',
} as const;
