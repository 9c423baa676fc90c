/** What the check of a revision says. */
export const formulaSayings = {
  'check-yes': '{formula}, revision {number}, may be made for sale in {markets}.',
  'check-no':
    '{formula}, revision {number}, may not be made for sale in {markets}: {n, plural, one {# thing stands} other {# things stand}} against it.',
  'check-decide':
    '{formula}, revision {number}, may be made for sale in {markets} once {n, plural, one {# question is} other {# questions are}} decided.',
  'check-mixed-yes':
    '{formula}, revision {number}, may be made for sale in {yesMarkets}.{hasDecide, select, yes { In {decideMarkets} it may once the open questions are decided.} other {}}{hasNo, select, yes { In {noMarkets} it may not.} other {}}',
  'check-mixed-no':
    '{formula}, revision {number}, may not be made for sale in {noMarkets}. In {decideMarkets} it may once the open questions are decided.',
  'check-market-yes': 'May be made for sale in {market}.',
  'check-market-no':
    'May not be made for sale in {market}: {n, plural, one {# thing stands} other {# things stand}} against it.',
  'check-market-no-report': 'May not be made for sale in {market}: no assessor’s report covers it there.',
  'check-market-decide':
    'May be made for sale in {market} once {n, plural, one {# question is} other {# questions are}} decided.',

  'sale-trial': '{formula}, revision {number}, is written down as a trial, and a trial is never sold.',
  'sale-prohibited':
    '{substance} is prohibited{hasUse, select, yes { as {use}} other {}} ({rule}; {markets}).',
  'sale-peroxide-over':
    'Lot {lots}: the peroxide value of {substance} is {value} mmol/l, and it has to be {isBelow, select, yes {below} other {at most}} {limitValue} mmol/l before it goes in ({rule}; {markets}).',
  'product-use':
    '{hasWhat, select, yes {{what}, } other {}}{isRinsed, select, yes {rinsed off} other {left on}}, category {category}',
  'ifra-statement': 'certificate {reference}, IFRA {edition}, category {category}, lot {lot}',
  'sale-over':
    '{substance} may reach {percent} %, above its limit of {limitPercent} %{hasUse, select, yes { as {use}} other {}} ({rule}; {markets}).',
  'sale-unknown': 'Not known: {what} ({markets}). Somebody has to decide it once, with a reason.',
  'sale-unknown-lapsed':
    'Not known: {what} ({markets}). {by} decided on it on {on, date, long}, upon another composition: somebody has to decide it again, with a reason.',
  'decision-said':
    '{verdict, select, accepted {Accepted} refused {Refused} other {Opened again}} by {by} on {on, date, long}: {reason}',
  'decision-formerly':
    'Decided for revision {number} by {by} on {on, date, long}, {verdict, select, accepted {accepted} other {refused}}: {reason}',
  'decision-lapsed':
    '{verdict, select, accepted {Accepted} other {Refused}} by {by} on {on, date, long}, upon another composition (“{reason}”): that no longer counts.',
  'sale-unknown-refused': '{by} decided against {substance} ({markets}).',
  'sale-unknown-accepted': '{by} decided that {substance} may be in it ({markets}).',
  'sale-supplier-over':
    '{substance} is {percent} %; its supplier allows at most {limitPercent} % ({rule}; {markets}).',
  'sale-report-of-others':
    'The assessor’s report {report} names other products, and covers no other: {products} is not among them ({markets}).',
  'sale-report-leaves-product':
    'The assessor’s report {report} names the products that it covers, and {product} is not among them ({markets}).',
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

  'market-us-federal-only':
    'For the United States: prepared by the tables; federal rules only; state laws add duties.',
  'market-us-no-allergen-list':
    'The United States have no federal list of fragrance allergens in force, so none has to be named; the rule proposed under MoCRA was still awaited when the tables were gathered.',
  'market-us-soap':
    'What is mainly alkali salts of fatty acids, cleans by them and is sold only as soap is no cosmetic there (21 CFR 701.20, from memory); a claim to moisturise makes it one.',

  'open-identity': 'which material {substance} is',
  'open-may-be-prohibited': 'whether {substance} is the material that is prohibited',
  'open-amount': 'how much {substance} there is',
  'open-value': 'the limit of {substance}',
  'open-use': 'whether the rule for {substance} goes for this use',
  'open-counted-as-other': 'the {asWhat} of {substance}',
  'open-needs-certificate':
    '{hasWhat, select, yes {the {asWhat} of {substance}} other {what the certificate says of {substance}}}',
  'open-law-not-in-tables': 'what federal law says of it',
  'open-positive-list': 'whether {substance} may be used as a {asWhat} at all',
  'open-conditions': 'where and how {substance} may be used as a {asWhat}',
  'open-label-name': 'whether {substance} has to be named on the label',
  'open-composition': 'what is in {substance}',
  'open-rest': 'what else is in {substance}',
  'open-constituent':
    'whether {substance}, listed for {material}, has a limit (none of the tables knows that name)',

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
    '{hasWhat, select, yes {The {asWhat} of {substance}} other {More of {substance} than how much is put in}} has to be known{hasMost, select, yes { ({isBelow, select, yes {below} other {at most}} {mostValue} mmol/l)} other {}}: {rule}. The certificate of the lot tells it.',
  'unknown-law-not-in-tables':
    'No rule of federal law on what a cosmetic may hold is in these tables: whether anything in it is prohibited or restricted in the United States is unknown to this tool. Somebody who knows the federal rules (21 CFR 700 and the lists of colour additives) and those of the states has to say.',
  'unknown-label-name':
    'Whether {substance} has to be named on the label (as {mayBe}) is not known: it may be one of several materials.',
  'unknown-label-amount':
    'Whether {substance} has to be named on the label (as {mayBe}) is not known: nobody says how much there is.',
  'unknown-positive-list':
    'Only what is listed may be used as a {asWhat} ({rule}), and none of these tables says that {substance} is. Somebody has to look it up in the list, with its conditions of use.',
  'unknown-conditions':
    '{substance} is listed as a {asWhat} ({rule}). Where it may be used, how much of it and how pure it must be is not in these tables: somebody has to read its conditions of use in the list.',
  'unknown-composition':
    'Nobody says what is in {substance} that has a limit or must be named. Its supplier’s paper would answer: enter it with the material.',
  'unknown-rest':
    'Only part of what is in {substance} is known{hasPaper, select, yes { ({paper})} other {}}. What else is in it? Its supplier’s paper would answer: enter it with the material.',
  'unknown-rest-unsaid':
    'Nobody says whether the constituents of {substance} are all that has a limit or must be named. What else is in it? Its supplier’s paper would answer: enter it with the material.',
  'unknown-constituent':
    'None of the tables knows {substance}, which is listed for {material}: whether it has a limit or must be named is not known. A CAS number or another spelling may find it.',
} as const;
