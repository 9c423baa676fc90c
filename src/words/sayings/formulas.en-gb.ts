/** What the check of a revision says. */
export const formulaSayings = {
  'check-yes': '{formula}, revision {number}, may be made for sale ({markets}).',
  'check-no':
    '{formula}, revision {number}, may not be made for sale ({markets}): {n, plural, one {# thing stands} other {# things stand}} against it.',
  'check-decide':
    '{formula}, revision {number}, may be made for sale ({markets}) once {n, plural, one {# question is} other {# questions are}} decided.',

  'sale-trial': '{formula}, revision {number}, is written down as a trial, and a trial is never sold.',
  'sale-prohibited': '{substance} is prohibited ({rule}; {markets}).',
  'sale-over': '{substance} may reach {percent} %, above its limit of {limitPercent} % ({rule}; {markets}).',
  'sale-unknown': 'Not known: {substance} ({markets}). Somebody has to decide it once, with a reason.',
  'sale-unknown-lapsed':
    'Not known: {substance} ({markets}). {by} decided on it on {on, date, long}, upon another composition: somebody has to decide it again, with a reason.',
  'decision-lapsed':
    '{verdict, select, accepted {Accepted} other {Refused}} by {by} on {on, date, long}, upon another composition (“{reason}”): that no longer counts.',
  'sale-unknown-refused': '{by} decided against {substance} ({markets}).',
  'sale-unknown-accepted': '{by} decided that {substance} may be in it ({markets}).',
  'sale-supplier-over':
    '{substance} is {percent} %; its supplier allows at most {limitPercent} % ({rule}; {markets}).',
  'sale-report-missing': 'No assessor’s report covers it for {markets}.',
  'sale-report-over':
    '{substance} is {percent} %; the assessor’s report {report} allows at most {mostPercent} % ({markets}).',
  'sale-report-below':
    '{substance} is {percent} %; the assessor’s report {report} asks for at least {leastPercent} % ({markets}).',
  'sale-report-not-covered': '{substance} is not in the assessor’s report {report} ({markets}).',
  'sale-report-base-not-covered': 'The assessor’s report {report} covers another base ({markets}).',
  'sale-report-scent-not-covered': 'The assessor’s report {report} does not name this formula ({markets}).',
  'sale-report-review-passed':
    'The assessor’s report {report} was to be looked at again by {reviewBy, date, long} ({markets}). Have it renewed and enter the new day with the report; until then it can be made as a trial.',
  'sale-report-review-close':
    'The assessor’s report {report} is to be looked at again by {reviewBy, date, long} ({markets}): after that day nothing can be made for sale by it.',

  'unknown-shared-cas':
    'Several materials share the CAS number of {substance}: {mayBe}. To tell them apart, give its {tellApartBy}.',
  'unknown-ambiguous-name':
    'Several materials go by the name {substance}: {mayBe}. To tell them apart, give its {tellApartBy}.',
  'unknown-name-contradicts-fields':
    'The name {substance} says another plant part or process than its fields. It may be {mayBe}.',
  'unknown-may-be-prohibited':
    'The number of {substance} covers a prohibited material too: {mayBe}. Nothing says which one it is.',
  'unknown-amount': 'Nobody says how much of {substance} there is, and there is a rule for it ({rule}).',
  'unknown-value': 'There is a rule for {substance}, but its figure is not known here ({rule}).',
  'unknown-use': 'The rule for {substance} does not name this use ({rule}).',
  'unknown-counted-as-other':
    'The rule counts {asWhat} and not {substance} itself ({rule}): the amount put in does not answer it.',
  'unknown-needs-certificate':
    'The rule asks for {asWhat} of {substance} ({rule}): the certificate of the lot answers it.',
  'unknown-label-name':
    'Whether {substance} has to be named on the label (as {mayBe}) is not known: it may be one of several materials.',
  'unknown-label-amount':
    'Whether {substance} has to be named on the label (as {mayBe}) is not known: nobody says how much there is.',
  'unknown-composition':
    'Nobody says what is in {substance} that has a limit or must be named. Its supplier’s paper would answer: enter it with the material.',
  'unknown-rest':
    'Only part of what is in {substance} is known{hasPaper, select, yes { ({paper})} other {}}. What else is in it? Its supplier’s paper would answer: enter it with the material.',
  'unknown-rest-unsaid':
    'Nobody says whether the constituents of {substance} are all that has a limit or must be named. What else is in it? Its supplier’s paper would answer: enter it with the material.',
  'unknown-constituent':
    'None of the tables knows {substance}, which is listed for {material}: whether it has a limit or must be named is not known. A CAS number or another spelling may find it.',
} as const;
