/** Products with little or no water: whether microbes can grow in them, and what to be careful of. */
export const lowWaterSayings = {
  'low-water-yes': 'Low-risk for microbes as it is filled: {because}',
  'low-water-no-phase':
    'Not low-risk for microbes: water goes into it, and nothing that is known makes up for that. It needs a preservative and a challenge test.',
  'low-water-no-solution':
    'Not low-risk for microbes: what is in it dissolves in the water that comes in while it is used, and does not bind it enough.',
  'low-water-unknown-use':
    'Whether it is low-risk for microbes is not known: nobody has said whether water can come in while it is used.',
  'low-water-unknown-phase':
    'Whether it is low-risk for microbes is not known: one of its materials has no label name, so nobody knows whether water is in it.',
  'low-water-unknown-wet':
    'Whether it is low-risk for microbes is not known: it holds no water as it is filled, and water comes in while it is used.',
  'low-water-ph-low': 'its pH lies below 3',
  'low-water-ph-high': 'its pH lies above 10',
  'low-water-anhydrous': 'no water goes into it, and none comes in while it is used',
  'low-water-alcohol': 'it holds more than 20 % of ethanol',
  'low-water-fill-temperature': 'it is filled above 65 °C',
  'low-water-water-activity': 'its water activity lies below 0.75',
  'low-water-solvent': 'it is based on an organic solvent',
  'low-water-oxidising': 'it oxidises',
  'low-water-aluminium': 'it holds more than 25 % of aluminium chlorohydrate',
  'low-water-criterion-source': 'Criterion of ISO 29621, as a test laboratory lists it.',
  'low-water-comes-in':
    'Water comes in while it is used: opened in the shower or taken with wet fingers, it is no longer dry. A spatula and a warning on the label, a pack for one use, or a broad preservative.',
  'low-water-may-come-in': 'Say whether water can come in while it is used: in the shower, with wet fingers.',
  'low-water-condenses':
    'Water condenses on a cold tub that stands uncovered: let it come to the temperature of the room with its lid on.',
  'low-water-antioxidant':
    'An antioxidant is not a preservative: it keeps fat from going rancid and does nothing against microbes.',
  'low-water-starch':
    'Starch brings a little bound water in: about {typical} % of the product, at most {most} %.',
  'low-water-write-down':
    'Low risk is a claim: composition, process, pack and use have to justify it in the safety report, and hygiene in making stays.',
  'low-water-level-below': '{name} is {percent} %; makers use it from {least} % on.',
  'low-water-level-above':
    '{name} is {percent} %; makers use it up to {most} %, and more of it can speed rancidity up.',
} as const;
