/** What is missing on a label, element by element, and what cannot be worked out for it. */
export const labelProblems = {
  'name-missing': { says: '{where} is empty.', mend: 'Write the name.' },
  'months-not-whole': {
    says: '{where} is {found}; whole months from {allowed} on can be counted.',
    mend: 'Give whole months, such as 12.',
  },
  'lot-past-when-made': {
    says: '{where} was best before {found}, before anything was made of it on {allowed}.',
    mend: 'Check both dates; a lot past its date does not go into a batch.',
  },
  'label-function-missing': {
    says: 'The label does not say what the product is for.',
    mend: 'Write its function, such as body butter, or say that its look leaves no doubt.',
  },
  'label-content-below-ounces': {
    says: 'The declared content is less than a hundredth of an ounce, which a label of the United States cannot state.',
    mend: 'Declare more, or do not sell it there.',
  },
  'label-e-mark-outside': {
    says: 'The e-mark is for packs of {from} g to {upTo} g.',
    mend: 'Leave the e-mark out.',
  },
  'label-e-mark-not-average': {
    says: 'The e-mark promises tins filled and checked the average way, and these are filled the minimum way.',
    mend: 'Leave the e-mark out, or fill the average way.',
  },
  'label-ingredients-missing': {
    says: 'The label has no ingredients.',
    mend: 'Write the formula of the product down.',
  },
  'label-name-unknown': {
    says: 'Nobody has said under which name these stand on a label: {materials}.',
    mend: 'Enter their label names; the supplier\u2019s paper has them.',
  },
  'label-name-of-several': {
    says: 'The label name of these holds several ingredients: {materials}. How much there is of each, and so its place in the list, is not known.',
    mend: 'Enter each ingredient as a material of its own and mix them as a base by their shares, which the supplier’s paper gives.',
  },
  'label-allergens-undecided': {
    says: 'It is not decided whether these have to be named on the label: {substances}.',
    mend: 'Decide each in the check of the formula, by name and with a reason.',
  },
  'label-keeping-unknown': {
    says: 'The label has no best-before date.',
    mend: 'Say how many months the product keeps.',
  },
  'label-period-missing': {
    says: 'The product keeps more than 30 months, and the label does not say how long after opening.',
    mend: 'Enter the months after opening.',
  },
  'label-precautions-missing': {
    says: 'The label lacks precautions that a rule asks for: {lacking}.',
    mend: 'Add them to the precautions of the product, in these words.',
  },
  'label-batch-missing': {
    says: 'The label has no batch number.',
    mend: 'Start the filling run; it gives the number.',
  },
  'label-contact-missing': {
    says: 'The label does not say how a buyer in the United States reports harm.',
    mend: 'Enter a telephone number there, or an e-mail or web address, with the workshop’s details.',
  },
  'label-sale-countries-missing': {
    says: 'Whether the language of the label is right is not known: each member state of the European Union sets it, and nobody has said in which of them the product is sold.',
    mend: 'Choose the countries with the product.',
  },
  'label-languages-not-told': {
    says: 'Nobody has said in which languages the label is printed.',
    mend: 'Choose them with the labels of the product.',
  },
  'label-words-not-in-language': {
    says: 'The words of the label are not in the language of: {countries}.',
    mend: 'Have a label in that language, or do not sell it there.',
  },
  'label-responsible-where': {
    says: 'Where the responsible person is cannot be told: the address names no country.',
    mend: 'Add the country where the workshop is described.',
  },
  'label-contact-not-domestic': {
    says: 'What is to reach the responsible person for the United States is no e-mail or web address and no telephone number there.',
    mend: 'Give an e-mail or web address, or a telephone number of the United States.',
  },
  'label-responsible-missing': {
    says: 'The label lacks name or address of the responsible person for {market, select, GB {Great Britain} NI {Northern Ireland} US {the United States} other {the European Union}}.',
    mend: 'Enter both with the workshop\u2019s details.',
  },
  'label-responsible-outside': {
    says: '{market, select, GB {In Great Britain the responsible person must be in the United Kingdom} NI {In Northern Ireland the responsible person must be there or in the European Union} other {In the European Union the responsible person must be there or in Northern Ireland}}; the address on the label is not.',
    mend: 'Enter the person established there, with the workshop\u2019s details.',
  },
  'label-origin-missing': {
    says: 'The label of an imported product names its country, and nobody has said where it is made.',
    mend: 'Enter the country with the workshop\u2019s details.',
  },
} as const;
