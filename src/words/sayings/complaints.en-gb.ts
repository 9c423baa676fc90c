/** What the pages of customers' words say. */
export const complaintSayings = {
  'complaint-answer':
    '{effect, select, serious {A serious undesirable effect of {product}: the authority has to be told.} undesirable {An undesirable effect of {product}: it is counted in the product file.} other {A word on {product} that counts as no effect on health.}} {state, select, open {Nobody has looked into it yet.} closed {It is closed.} other {It was looked into, and is not closed.}}',
  'tell-gb':
    'Great Britain: tell the Secretary of State without delay, with the product’s name, the batch and what you do about it.',
  'tell-ni':
    'Northern Ireland: tell the authority without delay, {isPast, select, yes {at the latest by {by, date, long}: that day is past} other {at the latest by {by, date, long}}}, with the product’s name, the batch and what you do about it.',
  'tell-eu':
    'European Union: tell the authority of the Member State where it happened without delay, {isPast, select, yes {at the latest by {by, date, long}: that day is past} other {at the latest by {by, date, long}}}, with the product’s name, the batch and what you do about it.',
  'tell-us':
    'United States: report it to the Food and Drug Administration by {by, date, long}{isPast, select, yes {: that day is past} other {}}, with a copy of the label; new medical facts within a year likewise.',
} as const;
