/** What can go wrong between a page and the workshop's computer, and what a page sees before it asks. */
export const webProblems = {
  'workshop-not-reached': {
    says: "The workshop's computer does not answer, so this may not have been saved.",
    mend: 'Look whether it is on and on the same network, then try again: the same entry sent twice counts once.',
  },
  'answer-not-understood': {
    says: "The workshop's computer answered with {found}, and this page does not know what that means.",
    mend: 'Load the page again. If it stays so, the page and the program are of different versions: start the program anew.',
  },
  'page-mistake': {
    says: 'The page made a mistake: {found}.',
    mend: 'Load the page again. Entries already made are saved.',
  },
  'earlier-entry-arrived': {
    says: 'Your first entry had arrived after all and stands in the record; the changed one was not sent.',
    mend: 'Look at what stands there now, then correct it where it is wrong.',
  },
  'count-negative': {
    says: '{where} is {found}, less than nothing.',
    mend: 'Give a whole number of {allowed, select, 0 {nought} other {{allowed}}} or more.',
  },
  'count-below-least': {
    says: '{where} is {found}; the least is {allowed}.',
    mend: 'Give a whole number of {allowed} or more.',
  },
  'nobody-said-who': {
    says: 'Nobody said who is working, and every entry carries a name.',
    mend: 'Choose a name at the top of the page.',
  },
  'count-missing': { says: '{where} is empty.', mend: 'Write how many, in digits.' },
  'not-a-whole-number': {
    says: '{where} is \u201c{found}\u201d, which is not a whole number.',
    mend: 'Write digits only, without comma or point, such as 12{allowed, select, 0 {} other {; the least is {allowed}}}.',
  },
  'gross-negative': {
    says: 'The scale shows {found} g with the tub on it, less than nothing.',
    mend: 'Set the scale to nought with nothing on it, then weigh the tub again.',
  },
  'tare-not-said': {
    says: 'It is not said what the tub alone weighs, and its weight would count as what is in it.',
    mend: 'Weigh such a tub empty and enter that, or enter 0 where the scale showed nought with the empty tub on it.',
  },
  'tare-above-gross': {
    says: 'The tub alone ({found} g) is heavier than the tub with what is in it ({allowed} g).',
    mend: 'Look whether the two figures were swapped, or weigh again.',
  },
  'choice-missing': {
    says: 'Nothing is chosen for {where}.',
    mend: 'Choose one.',
  },
  'text-missing': {
    says: '{where} is empty.',
    mend: 'Write something in.',
  },
  'range-least-above-most': {
    says: '{where} is {found} %, above the most, which is {allowed} %.',
    mend: 'Lower the one or raise the other.',
  },
  'ranges-too-much': {
    says: 'The least of the oils together is {found} % of the scent.',
    mend: 'It may be 100 % at the most: lower one of them.',
  },
  'ranges-too-little': {
    says: 'The most that the oils may be together is {found} % of the scent.',
    mend: 'It has to reach 100 %: raise one of them.',
  },
  'date-missing': {
    says: '{where} is missing.',
    mend: 'Choose a day.',
  },
} as const;
