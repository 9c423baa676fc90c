import type { BenchHand } from './bench-hand.ts';
import { type Goods, idOf } from './stock-up.ts';

const FUNCTIONS = [
  ['shea', 'emollient, gives body'],
  ['kokum', 'emollient, gives firmness'],
  ['cocoa', 'emollient, gives firmness'],
] as const;

/** What the two of them wrote for the file of their first product. Invented, as is the dose. */
export async function writeProductFile(hand: BenchHand, productId: string, goods: Goods): Promise<void> {
  const details = {
    description: 'A pale whipped body butter in a 60 ml tin with a screw lid, scented with orange and cedar.',
    functions: FUNCTIONS.map(([key, text]) => ({ materialId: idOf(goods, key), text })),
    physical: 'Pale cream, light, melts on the skin; melts away from about 34 °C.',
    stability:
      'Three tins kept twelve months at 20 °C and three at 30 °C: no change of smell or colour seen.',
    microbiology: 'No water goes in, and the tin is opened with dry hands.',
    waterInUse: 'no' as const,
    impurities: 'As the suppliers’ specifications say; none lists a heavy metal above its detection limit.',
    normalUse: 'Rubbed into dry skin of the body once or twice a day by adults. Not for broken skin or eyes.',
    gmpStatement:
      'Made by our own written rules of good practice since 2024: clean bench, two pairs of eyes at each weighing, a record of each batch.',
    claims: [
      { claim: 'Softens dry skin', proof: 'Twelve people used it for two weeks and filled in a card each.' },
    ],
    notification: {
      category: 'Body care',
      contact: 'The bench, by post',
      nanomaterials: 'no' as const,
      cmr: 'no' as const,
    },
  };
  await hand.write('saveProductFile', { version: null, details }, { id: productId });
  await hand.write('savePointOfDeparture', {
    details: {
      name: 'Linalool',
      milligramsPerKgDay: '250',
      route: 'oral',
      source: 'Invented for the example',
    },
  });
}

/** One word of a customer, looked into and closed. */
export async function enterComplaint(hand: BenchHand, productId: string, runId: string): Promise<void> {
  hand.at(-18, 12);
  const { id } = await hand.write('enterComplaint', {
    productId,
    runId,
    receivedOn: hand.dateIn(-18),
    details: {
      kind: 'skin-reaction',
      said: 'Red, itching patches on both forearms the evening after the first use; gone after two days.',
      effect: 'undesirable',
      happenedIn: 'GB',
    },
  });
  hand.at(-17, 10);
  await hand.write(
    'followComplaint',
    {
      state: 'looked-into',
      said: 'The retained sample smells and looks as it should. The customer was told to stop using it.',
    },
    { id },
  );
}
