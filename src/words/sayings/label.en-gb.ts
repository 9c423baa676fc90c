/** Why an element of a label is there, missing or not needed. */
export const labelSayings = {
  'ingredients-not-to-be-said': 'The list cannot be worked out: look at the check of its formula.',
  'label-function-clear': 'Its look leaves no doubt what it is for.',
  'label-function-missing': 'Nobody has said what the product is for.',
  'label-content-too-small': 'Not asked for below {from} g.',
  'label-content-below-ounces': 'A hundredth of an ounce is the least that can be declared there.',
  'label-e-mark-optional': 'The e-mark is a choice, and the product does not ask for it.',
  'label-e-mark-choice':
    'No law asks for it: it promises that the tins were filled and checked the average way, and lets prepacks of that kind move freely in the European Union.',
  'label-e-mark-outside': 'The e-mark is for {from} g to {upTo} g.',
  'label-e-mark-not-average':
    'The e-mark is for tins filled and checked the average way; these are filled the minimum way.',
  'label-ingredients-missing': 'There is no formula yet.',
  'label-name-unknown': 'Label names are not known of: {materials}.',
  'label-name-of-several':
    'One label name holds several ingredients, and the place of each in the list is not known: {materials}. Enter each as a material, and the blend as a base of them.',
  'label-allergens-undecided': 'Not decided whether to name: {substances}.',
  'label-keeping-unknown': 'Nobody has said how long it keeps.',
  'label-period-instead': 'It keeps more than 30 months: the period after opening stands instead.',
  'label-date-instead': 'It keeps 30 months or less: the date stands instead.',
  'label-period-missing': 'Nobody has said how long it keeps once opened.',
  'label-date-kept': 'Federal law does not ask for it; what stands there is the workshop’s own.',
  'label-no-period-used-up': 'It is used up at once: no period after opening is needed.',
  'label-no-period-closed': 'Its pack cannot be opened: no period after opening is needed.',
  'label-no-period-keeps': 'It does not spoil once open: no period after opening is needed.',
  'label-precautions-missing': 'A rule asks for: {lacking}.',
  'label-no-precautions': 'No rule that is known here asks for any.',
  'label-batch-missing': 'The filling run gives it its number.',
  'label-batch-kept': 'Federal law does not ask for it; it is kept, since tins are called back by it.',
  'label-contact-is-address': 'The address above is in the United States and takes reports of harm.',
  'label-contact-missing':
    'Nobody has said how a buyer in the United States reports harm: an address or telephone number there, or an e-mail or web address.',
  'label-sale-countries-missing':
    'Not known whether the language is right: each member state sets it, and nobody has said in which of them it is sold. Choose the countries with the product.',
  'label-languages-not-told':
    'Not known: nobody has said in which languages it is printed. Choose them with the labels of the product.',
  'label-words-not-in-language':
    'What it prints is not in the language of: {countries}. Add the language to the labels of the product and its words to the product, or do not sell it there.',
  'label-responsible-missing': 'Name or address is missing.',
  'label-us-ingredients-place':
    'Has to stand on the package itself, or on a tag, tape or card firmly fixed to it: a leaflet in the tin does not do. Off the package only for small ones (below 12 square inches) without a carton in a tray or rack of a display that shows the list or holds sheets of it, and for direct mail order (21 CFR 701.3(b), (i), (r), from memory, check).',
  'label-responsible-where':
    'Not known where this is: the address names no country. Add it where the workshop is described.',
  'label-contact-not-domestic':
    'It is no e-mail or web address and no telephone number of the United States, and one of these is asked for.',
  'label-responsible-outside':
    'The address lies outside {market, select, GB {the United Kingdom} NI {Northern Ireland and the European Union} other {the European Union and Northern Ireland}}.',
  'label-address-taken-until':
    'No address of the United Kingdom was recognised. One of the European Union alone is taken until {until, date, long}.',
  'label-not-imported':
    'Made within {market, select, GB {the United Kingdom} US {the United States} other {the European Union or Northern Ireland}}.',
  'label-origin-missing': 'Nobody has said in which country it is made.',
} as const;
