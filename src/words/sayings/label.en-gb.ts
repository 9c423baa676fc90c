/** Why an element of a label is there, missing or not needed. */
export const labelSayings = {
  'ingredients-not-to-be-said': 'The list cannot be worked out: look at the check of its formula.',
  'label-function-clear': 'Its look leaves no doubt what it is for.',
  'label-function-missing': 'Nobody has said what the product is for.',
  'label-content-too-small': 'Not asked for below {from} g.',
  'label-ingredients-missing': 'There is no formula yet.',
  'label-name-unknown': 'Label names are not known of: {materials}.',
  'label-allergens-undecided': 'Not decided whether to name: {substances}.',
  'label-keeping-unknown': 'Nobody has said how long it keeps.',
  'label-period-instead': 'It keeps more than 30 months: the period after opening stands instead.',
  'label-date-instead': 'It keeps 30 months or less: the date stands instead.',
  'label-period-missing': 'Nobody has said how long it keeps once opened.',
  'label-precautions-missing': 'A rule asks for: {lacking}.',
  'label-no-precautions': 'No rule that is known here asks for any.',
  'label-batch-missing': 'The filling run gives it its number.',
  'label-responsible-missing': 'Name or address is missing.',
  'label-responsible-outside':
    'The address lies outside {market, select, GB {the United Kingdom} NI {Northern Ireland and the European Union} other {the European Union and Northern Ireland}}.',
  'label-address-taken-until':
    'No address of the United Kingdom was recognised. One of the European Union alone is taken until {until, date, long}.',
  'label-not-imported':
    'Made within {market, select, GB {the United Kingdom} other {the European Union or Northern Ireland}}.',
  'label-origin-missing': 'Nobody has said in which country it is made.',
} as const;
