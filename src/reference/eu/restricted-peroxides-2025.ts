/**
 * Annex III of Regulation (EC) No 1223/2009: oils and terpenes whose peroxide value is limited in the raw material.
 * A selection that makers with natural materials meet. The sources stand in restricted-substances-2025.
 */
import type { RestrictedSubstance } from '../restricted-substance.ts';

export const peroxideRestrictions: readonly RestrictedSubstance[] = [
  {
    id: 'peroxide-abies-alba', name: 'Abies alba oil and extract', aliases: ['Abies Alba Leaf Oil', 'Silver fir oil'],
    cas: ['90028-76-5'], kind: 'restricted', annex: 'III', entry: '103',
    rules: [
      {
        id: 'peroxide-abies-alba-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-abies-alba-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-abies-pectinata', name: 'Abies pectinata oil and extract', aliases: ['Abies Pectinata Oil'],
    cas: ['92128-34-2'], kind: 'restricted', annex: 'III', entry: '105',
    rules: [
      {
        id: 'peroxide-abies-pectinata-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-abies-pectinata-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-abies-sibirica', name: 'Abies sibirica oil and extract',
    aliases: ['Abies Sibirica Oil', 'Siberian fir oil'], cas: ['91697-89-1'], kind: 'restricted', annex: 'III',
    entry: '106',
    rules: [
      {
        id: 'peroxide-abies-sibirica-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-abies-sibirica-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-abies-balsamea', name: 'Abies balsamea oil and extract',
    aliases: ['Abies Balsamea Needle Oil', 'Balsam fir oil'], cas: ['85085-34-3'], kind: 'restricted', annex: 'III',
    entry: '107',
    rules: [
      {
        id: 'peroxide-abies-balsamea-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-abies-balsamea-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-pumilio', name: 'Pinus mugo pumilio oil and extract',
    aliases: ['Pinus Mugo Pumilio Oil', 'Dwarf pine oil'], cas: ['90082-73-8'], kind: 'restricted', annex: 'III',
    entry: '108',
    rules: [
      {
        id: 'peroxide-pinus-pumilio-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-pinus-pumilio-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-mugo', name: 'Pinus mugo leaf and twig oil and extract',
    aliases: ['Pinus Mugo', 'Pinus Mugo Leaf Oil', 'Pinus Mugo Twig Leaf Extract', 'Pinus Mugo Twig Oil'],
    cas: ['90082-72-7'], kind: 'restricted', annex: 'III', entry: '109',
    rules: [
      {
        id: 'peroxide-pinus-mugo-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-pinus-mugo-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-sylvestris', name: 'Pinus sylvestris oil and extract',
    aliases: ['Pinus Sylvestris Leaf Oil', 'Scots pine oil', 'Pine needle oil'], cas: ['84012-35-1', '8023-99-2'],
    kind: 'restricted', annex: 'III', entry: '110',
    rules: [
      {
        id: 'peroxide-pinus-sylvestris-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-pinus-sylvestris-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant. Also in echa-terp.',
  },
  {
    id: 'peroxide-pinus-nigra', name: 'Pinus nigra oil and extract', aliases: ['Pinus Nigra Oil'],
    cas: ['90082-74-9'], kind: 'restricted', annex: 'III', entry: '111',
    rules: [
      {
        id: 'peroxide-pinus-nigra-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-pinus-nigra-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-palustris', name: 'Pinus palustris oil and extract', aliases: ['Pinus Palustris Oil'],
    cas: ['8002-09-3'], kind: 'restricted', annex: 'III', entry: '112',
    rules: [
      {
        id: 'peroxide-pinus-palustris-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-pinus-palustris-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-pinaster', name: 'Pinus pinaster oil and extract',
    aliases: ['Pinus Pinaster Oil', 'Maritime pine oil'], cas: ['90082-75-0'], kind: 'restricted', annex: 'III',
    entry: '113',
    rules: [
      {
        id: 'peroxide-pinus-pinaster-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-pinus-pinaster-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-pumila', name: 'Pinus pumila leaf and twig oil and extract',
    aliases: ['Pinus Pumila', 'Pinus Pumila Needle Extract', 'Pinus Pumila Twig Leaf Extract', 'Pinus Pumila Twig Leaf Oil'],
    cas: ['97676-05-6'], kind: 'restricted', annex: 'III', entry: '114',
    rules: [
      {
        id: 'peroxide-pinus-pumila-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-pinus-pumila-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-species', name: 'Pinus species oil and extract', aliases: ['Pine oil'], cas: ['94266-48-5'],
    kind: 'restricted', annex: 'III', entry: '115',
    rules: [
      {
        id: 'peroxide-pinus-species-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-pinus-species-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinus-cembra', name: 'Pinus cembra oil and extract',
    aliases: ['Pinus Cembra Oil', 'Swiss stone pine oil'], cas: ['92202-04-5'], kind: 'restricted', annex: 'III',
    entry: '116',
    rules: [
      {
        id: 'peroxide-pinus-cembra-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-pinus-cembra-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-picea-mariana', name: 'Picea mariana oil and extract',
    aliases: ['Picea Mariana Oil', 'Black spruce oil'], cas: ['91722-19-9'], kind: 'restricted', annex: 'III',
    entry: '118',
    rules: [
      {
        id: 'peroxide-picea-mariana-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-picea-mariana-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-thuja', name: 'Thuja occidentalis oil and extract',
    aliases: ['Thuja Occidentalis Oil', 'Thuja oil', 'Cedar leaf oil'], cas: ['90131-58-1'], kind: 'restricted',
    annex: 'III', entry: '119',
    rules: [
      {
        id: 'peroxide-thuja-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-thuja-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-3-carene', name: '3-Carene', aliases: ['delta-3-Carene'], cas: ['13466-78-9'], kind: 'restricted',
    annex: 'III', entry: '121',
    rules: [
      {
        id: 'peroxide-3-carene-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-3-carene-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-cedrus-atlantica', name: 'Cedrus atlantica oil and extract',
    aliases: [
      'Cedrus Atlantica Oil/Extract', 'Cedrus Atlantica Bark Extract', 'Cedrus Atlantica Bark Oil',
      'Cedrus Atlantica Bark Water', 'Cedrus Atlantica Leaf Extract', 'Cedrus Atlantica Wood Extract',
      'Cedrus Atlantica Wood Oil', 'Atlas cedarwood oil',
    ],
    cas: ['92201-55-3', '8023-85-6'], kind: 'restricted', annex: 'III', entry: '122',
    rules: [
      {
        id: 'peroxide-cedrus-atlantica-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-cedrus-atlantica-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-cypress', name: 'Cupressus sempervirens oil and extract',
    aliases: ['Cupressus Sempervirens Oil', 'Cupressus Sempervirens Leaf/Stem Oil', 'Cypress oil'],
    cas: ['84696-07-1'], kind: 'restricted', annex: 'III', entry: '123',
    rules: [
      {
        id: 'peroxide-cypress-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-cypress-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant. Suppliers also print CAS 8013-86-3 for cypress oil (memory).',
  },
  {
    id: 'peroxide-turpentine', name: 'Turpentine',
    aliases: ['Turpentine gum', 'Turpentine oil', 'Turpentine, steam distilled'],
    cas: ['8006-64-2', '9005-90-7', '8052-14-0'], kind: 'restricted', annex: 'III', entry: '124',
    rules: [
      {
        id: 'peroxide-turpentine-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-turpentine-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-terpene-hydrocarbons', name: 'Terpene hydrocarbons', cas: ['68956-56-9'], kind: 'restricted',
    annex: 'III', entry: '128',
    rules: [
      {
        id: 'peroxide-terpene-hydrocarbons-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-terpene-hydrocarbons-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory',
        confidence: 'memory', note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant. Also in echa-terp.',
  },
  {
    id: 'peroxide-terpenes', name: 'Terpenes and terpenoids (except limonene)', cas: ['65996-98-7'],
    kind: 'restricted', annex: 'III', entry: '129',
    rules: [
      {
        id: 'peroxide-terpenes-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-terpenes-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant. Also in echa-terp.',
  },
  {
    id: 'peroxide-terpenes-2', name: 'Terpenes and terpenoids', cas: ['68917-63-5'], kind: 'restricted', annex: 'III',
    entry: '130',
    rules: [
      {
        id: 'peroxide-terpenes-2-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-terpenes-2-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant. Also in echa-terp.',
  },
  {
    id: 'peroxide-alpha-terpinene', name: 'Alpha-Terpinene', aliases: ['Alpha-Terpinene'], cas: ['99-86-5'],
    kind: 'restricted', annex: 'III', entry: '131',
    rules: [
      {
        id: 'peroxide-alpha-terpinene-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-alpha-terpinene-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-gamma-terpinene', name: 'gamma-Terpinene', aliases: ['Gamma-Terpinene'], cas: ['99-85-4'],
    kind: 'restricted', annex: 'III', entry: '132',
    rules: [
      {
        id: 'peroxide-gamma-terpinene-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max',
        value: 10, unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3',
        confidence: 'read',
      },
      {
        id: 'peroxide-gamma-terpinene-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-terpinolene', name: 'Terpinolene', aliases: ['p-Mentha-1,4(8)-diene'], cas: ['586-62-9'],
    kind: 'restricted', annex: 'III', entry: '133',
    rules: [
      {
        id: 'peroxide-terpinolene-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
      {
        id: 'peroxide-terpinolene-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Retained entry (103 to 133), taken as unchanged; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant.',
  },
  {
    id: 'peroxide-pinene', name: 'Pinene (alpha and beta)', aliases: ['alpha-Pinene', 'beta-Pinene'],
    cas: ['80-56-8', '7785-70-8', '127-91-3', '18172-67-3'], kind: 'restricted', annex: 'III', entry: '371',
    rules: [
      {
        id: 'peroxide-pinene-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 10,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: 'Ask for the peroxide value on the certificate; store closed, cool, with antioxidant. Entry 371 is not in Great Britain (memory). Also an allergen entry.',
  },
  {
    id: 'peroxide-limonene', name: 'Limonene (d-, l-, dl-)',
    aliases: ['Limonene', 'd-Limonene', 'l-Limonene', 'dl-Limonene', 'Dipentene'],
    cas: ['138-86-3', '7705-14-8', '5989-27-5', '5989-54-8'], kind: 'restricted', annex: 'III', entry: '88',
    rules: [
      {
        id: 'peroxide-limonene-eu-raw', markets: ['EU', 'NI'], basis: 'raw-material', quantity: 'max', value: 20,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'cosing3', confidence: 'read',
        note: 'For each substance.',
      },
      {
        id: 'peroxide-limonene-gb-raw', markets: ['GB'], basis: 'raw-material', quantity: 'max', value: 20,
        unit: 'mmol-per-litre', asWhat: 'peroxide value', strict: true, source: 'memory', confidence: 'memory',
        note: 'Same for d-limonene (entry 88) and old entries 167, 168; not looked up.',
      },
    ],
    source: 'cosing3', confidence: 'read',
    note: "Ask for the peroxide value on the certificate; store closed, cool, with antioxidant. Same figure on the database's own page (cosing-lim). Also an allergen entry.",
  },
];
