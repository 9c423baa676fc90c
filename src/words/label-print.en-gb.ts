/** How sentences about a label that is being laid out call its parts. */
export const labelPrintWords = {
  elements: {
    brand: 'the brand',
    name: 'the product name',
    function: 'the function',
    content: 'the declared content',
    ingredients: 'the list of ingredients',
    precautions: 'the precautions',
    other: 'a further line',
    durability: 'the best-before date',
    opened: 'the open jar',
    batch: 'the batch number',
    origin: 'the country of origin',
    responsible: 'the name and address',
    pointer: 'the word that there is a leaflet',
    symbol: 'the hand in a book',
    code: 'the code',
  },
  roles: {
    front: 'the front',
    back: 'the back',
    whole: 'the label',
    sticker: 'the sticker',
    leaflet: 'the leaflet',
  },
  pictures: {
    front: 'The front at true size',
    back: 'The back at true size',
    whole: 'The label at true size',
    sticker: 'The sticker at true size',
    leaflet: 'The leaflet at true size',
  },
  /** For whoever has the page read out. */
  alt: {
    handInBook: 'Hand in a book: more stands on the enclosed leaflet',
    hourglass: 'Hourglass: best used before the end of the date beside it',
    qr: (content: string) => `QR code: ${content}`,
    ean13: (digits: string) => `Bar code: ${digits}`,
    artwork: 'Artwork of the label',
  },
  sheet: {
    title: (product: string, piece: string) => `${product}, ${piece}`,
    trial: 'Outlines of the labels of this sheet, numbered from 1',
  },
} as const;
