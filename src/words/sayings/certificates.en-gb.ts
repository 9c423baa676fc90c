/** What suppliers' papers on lots say, and what is asked of suppliers. */
export const certificateSayings = {
  'lot-without-certificate':
    'No certificate of this lot: it counts with the figures of {material}, as they are remembered or as an earlier paper had them.',
  'lot-certificate-complete':
    '{n, plural, one {Certificate} other {Certificates}} {reference}{hasDate, select, yes { of {datedOn, date, long}} other {}} {n, plural, one {replaces} other {replace}} the figures of {material} wherever this lot is used.',
  'lot-certificate-partial':
    '{n, plural, one {Certificate} other {Certificates}} {reference}{hasDate, select, yes { of {datedOn, date, long}} other {}}: what is listed there replaces the figures of {material} wherever this lot is used; what else is in it counts as before, since no paper says that it lists everything.',
  'lot-certificate-figures':
    '{n, plural, one {Certificate {reference}{hasDate, select, yes { of {datedOn, date, long}} other {}} lists} other {Certificates {reference} list}} no constituents: they count as with {material}.',
  'lot-shakes-tins':
    'Released tins {tins} have this lot in them and would not be released today ({units, plural, =0 {none is left on the shelf} one {one is on the shelf} other {# are on the shelf}}): {reasons}',
  'ifra-statement-counts':
    '{formula} holds {percent} %: within the {mostPercent} % that certificate {reference} allows in category {category} (IFRA {edition}).',
  'ifra-statement-exceeded':
    '{formula} holds {percent} %, more than the {mostPercent} % that certificate {reference} allows in category {category} (IFRA {edition}): this lot may not go into it for sale.',
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
  'shelf-yes': 'With {n, plural, one {lot} other {lots}} {lots}: it may be made for sale.',
  'shelf-no': 'With {n, plural, one {lot} other {lots}} {lots}: it may not be made for sale. {which}',
  'shelf-decide': 'With {n, plural, one {lot} other {lots}} {lots}: first somebody decides. {which}',
} as const;
