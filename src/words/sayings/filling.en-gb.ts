import { holdText } from '../hold-text.ts';

/** How a filling run stands, and what its release looks at. */
export const fillingSayings = {
  'run-begins': 'Fill {wanted, plural, one {# tin} other {# tins}}, {aimGrams} g each.',
  'run-goes-on': '{filled} filled, {stillToFill} to go, {aimGrams} g each.',
  'run-has-light-tins':
    '{count, plural, one {# tin is} other {# tins are}} too light{stillToFill, plural, =0 {: fill up or take out.} other {; # still to fill.}}',
  'run-mean-too-low':
    'On average the tins hold less than the label states: fill up the lightest, or fill the next ones fuller.',
  'run-bowl-is-empty':
    '{filled} filled; the bowl holds no more, and {stillToFill, plural, one {# tin is} other {# tins are}} not filled.',
  'run-is-full': 'All {filled} filled. Weigh what is left in the bowl and close the run.',
  'run-waits-for-release': '{units, plural, one {# tin waits} other {# tins wait}} for release.',
  'run-held': `{units, plural, one {# tin} other {# tins}} may not be released: ${holdText}.`,
  'run-released': '{units, plural, one {# tin} other {# tins}} released by {by}.',
  'run-rejected': '{units, plural, one {# tin} other {# tins}} rejected by {by}.',
  'check-made-for-sale': 'It was made for sale.',
  'check-made-as-trial': 'Batch {batch} was made as a trial, and a trial is never sold.',
  'check-weights-accepted': 'The weights of {units, plural, one {# tin} other {# tins}} stand.',
  'check-weights-rejected': 'The weights of {units, plural, one {# tin} other {# tins}} do not stand.',
  'check-weights-scale-held':
    '{count, plural, one {Tin {which} was} other {Tins {which} were}} weighed on a scale that had not passed its check: by how much it was out nobody knows.',
  'check-tares-unknown':
    'How much the empty tins differ was not weighed: a tin heavier than the mean holds less than its weight says. Ten empty tins tell.',
  'check-no-tins': 'No tin was filled.',
  'check-scale-too-coarse':
    'The scale is too coarse to judge the average way: its error is more than a fifth of the tolerable error.',
  'check-limits-kept': 'Limits and report allow the formula as of today.',
  'check-weighed-kept': 'What was weighed in keeps the limits and the report.',
  'check-weighed-unnamed':
    'As it was weighed in, the label has to name {which} ({markets}), and it does not. Set a wrong entry right, or reject the run and write the next revision with what was weighed.',
  'check-weighed-over': 'Weighed in was more than the limits or the report allow. {which}',
  'check-weighed-below': 'Weighed in was less than the report asks for. {which}',
  'check-weighed-opened':
    'As it was weighed in, something is not known that the formula does not raise. {which} Set a wrong entry right, or reject it and write the next revision with what was weighed: its check asks.',
  'check-ifra-not-known':
    'Not known, and not taken as allowed: how much of it the supplier allows in this use. {which}. Ask for a statement for this category; until then law, the IFRA table and the report decide alone.',
  'ifra-statement-elsewhere':
    '{material}, lot {lot}: statement {reference} is for category {isFor}, the product is of category {needed}',
  'check-report-valid': 'The report is valid today.',
  'check-report-past': 'Report {report} was to be reviewed by {reviewBy, date, long}.',
  'check-limits-not-known': 'The formula cannot be checked.',
  'check-lots-good':
    'None of {count, plural, one {# lot} other {# lots}} behind it is stopped.{undated, plural, =0 {} one { How long # of them keeps is not known: {which}.} other { How long # of them keep is not known: {which}.}}',
  'check-lot-stopped':
    '{item}, lot {lot}, was stopped{count, plural, =1 {} one {} other { (and # lots in all)}}: {reason}',
  'check-claims-open':
    'A tablet brought back late {count, plural, one {# entry} other {# entries}} of {which}, and nobody has answered: whether it is in the bowl is not known. Answer on the page of that batch.',
  'check-lot-past-when-used':
    '{item}, lot {lot}, was best before {bestBefore, date, long}, and it was used on {day, date, long}.',
  'check-lot-ends-first':
    '{item}, lot {lot}, ends on {bestBefore, date, long}, and these tins say {tins, date, long}.',
  'check-base-revised':
    '{item} was revised since lot {lot} was made, so limits and label would be of another base.',
  'check-markets-unseen':
    'Its product is sold in {markets} by now, and these tins were not checked for that when they were released.',
  'check-markets-added':
    'Since it was begun its product is sold in {markets} too: it is checked for that as well.',
  'check-label-printed-before':
    'The labels printed for {market, select, GB {Great Britain} NI {Northern Ireland} US {the United States} other {the EU}} say something else than they would now ({pieces}): print them again, and put the new ones on.',
  'check-label-complete':
    'The label for {market, select, GB {Great Britain} NI {Northern Ireland} US {the United States} other {the EU}} is complete.',
  'label-not-to-be-said': 'The label cannot be worded: {reason}',
  'label-does-not-fit': '{reason}',
  'label-run-rejected': 'The filling run was rejected: its tins are not for sale.',
  'label-trial-line': 'Trial. Not for sale.',
  'label-by-older-law':
    'Labels of batch {batch} for {market, select, GB {Great Britain} NI {Northern Ireland} US {the United States} other {the EU}} are worded as of {labelledOn, date, long}: {names, plural, =0 {} other {they do not name {which}, as Regulation (EU) 2023/1545 asks}}{doubts, plural, =0 {} other {{names, plural, =0 {} other {, and }}nobody has decided whether it asks for {undecided} to be named}}. Tins with them may be placed on the market until {placedUntil, date, long}; what was placed by then may be sold on until {soldUntil, date, long}{stop, select, none {.} placed {, and nothing shows that these were placed by then.} other {, and that day is past.}}{stop, select, none {} other { Print them anew and stick them over the old ones, or sell the product in another market only.}}',
  'check-area-clear': 'The bench was clear of earlier products.',
  'check-area-not-clear': 'The bench was not clear of earlier products when filling began, because: {reason}',
  'check-area-unsaid': 'Nobody said that the bench was clear of earlier products.',
  'check-containers': 'Containers: {how}.',
  'check-containers-unsaid': 'Nobody said how the containers were cleaned.',
  'check-counts-add-up': 'Pieces counted out, used, spoilt and put back add up.',
  'check-counts-missing': 'Counted out, and neither used nor spoilt nor put back: {which}.',
  'count-missing-part':
    '{missing} {part, select, tin {{missing, plural, one {tin} other {tins}}} lid {{missing, plural, one {lid} other {lids}}} other {{missing, plural, one {label} other {labels}}}}',
  'loss-usual':
    '{grams} g of batch {batch} stayed behind, {percent} %{from, select, typed { ({usual} % was planned)} formula { ({usual} % as a rule, by the last {batches} batches of this formula)} other { ({usual} % as a rule, by the last {batches} batches of the workshop)}}.',
  'loss-abnormal':
    'More stayed behind of batch {batch} than does as a rule: {grams} g, {percent} %. {from, select, typed {{usual} % was planned} formula {By the last {batches} batches of this formula it is {usual} %, and was between {least} and {most} %} other {By the last {batches} batches of the workshop it is {usual} %, and was between {least} and {most} %}}: that is {more} g more.',
  'check-sample-kept': 'A sample is kept.',
  'check-no-sample': 'No sample is kept: {reason}',
  'check-steps':
    '{open, plural, =0 {Every step has its record.} one {# of {steps} steps has no record.} other {# of {steps} steps have no record.}}',
  'check-deviations':
    '{count, plural, =0 {Nothing was done differently.} one {# thing was done differently: {which}.} other {# things were done differently: {which}.}}',
} as const;
