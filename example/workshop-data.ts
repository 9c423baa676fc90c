/**
 * The example workshop. Its people, places, products, recipes, prices and numbers are invented.
 * What the law and the tables say of its materials comes from src/reference, as for any workshop.
 */

export const WORKSHOP = {
  name: 'Hollow Lane Bench',
  responsibleGb: {
    name: 'Hollow Lane Bench',
    address: '3 Mill Steps, Wendle Cross, Exampleshire WX4 7ZZ, United Kingdom',
  },
  responsibleEu: {
    name: 'Corrin Quay Agents',
    address: '9 Quay Terrace, Ballymoyle, Example County BT99 9ZZ, Northern Ireland',
  },
  currency: 'GBP',
  country: 'GB',
  timeZone: 'Europe/London',
  backupFolder: '',
  bowlGrams: '2500',
  bowlMl: '3500',
} as const;

export const PEOPLE = ['Ines Hartwell', 'Jory Penrose'] as const;

export const SCALES = [
  {
    key: 'bench',
    name: 'Bench scale',
    capacityGrams: '5000',
    readabilityGrams: '1',
    checkWeightGrams: null,
    checkToleranceGrams: null,
  },
  {
    key: 'middle',
    name: 'Middle scale',
    capacityGrams: '2000',
    readabilityGrams: '0.1',
    checkWeightGrams: '1000',
    checkToleranceGrams: '0.05',
  },
  {
    key: 'small',
    name: 'Small scale',
    capacityGrams: '200',
    readabilityGrams: '0.01',
    checkWeightGrams: '100',
    checkToleranceGrams: '0.005',
  },
] as const;

/** `suggestion`: the key under which the tables know it; what is written here goes before what they say. */
export interface ExampleMaterial {
  readonly key: string;
  readonly name: string;
  readonly like: string;
  readonly supplier: string;
  readonly caution?: string;
  /** Its supplier's paper that lists everything in it that has a limit or must be named; absent: there is none. */
  readonly paper?: string;
  readonly density?: string;
  readonly reorderBelow: string;
  readonly packSize: string;
  readonly packPrice: string;
  readonly leadDays: number;
  /** What it comes from that somebody may react to or avoid; [] : none of them. */
  readonly origins?: readonly ('tree-nut' | 'bee' | 'animal' | 'daisy-family')[];
}

export const INGREDIENTS: readonly ExampleMaterial[] = [
  {
    key: 'shea',
    paper: 'NF specification SB, issue 4',
    origins: ['tree-nut'],
    name: 'Shea butter',
    like: 'shea butter',
    supplier: 'Northmere Fats',
    density: '0.91',
    reorderBelow: '800',
    packSize: '2000',
    packPrice: '27.40',
    leadDays: 4,
  },
  {
    key: 'kokum',
    paper: 'NF specification KB, issue 2',
    name: 'Kokum butter',
    like: 'kokum',
    supplier: 'Northmere Fats',
    density: '0.90',
    reorderBelow: '300',
    packSize: '1000',
    packPrice: '24.80',
    leadDays: 4,
  },
  {
    key: 'cocoa',
    paper: 'NF specification CB, issue 5',
    name: 'Cocoa butter',
    like: 'cocoa butter',
    supplier: 'Northmere Fats',
    density: '0.90',
    reorderBelow: '300',
    packSize: '1000',
    packPrice: '19.90',
    leadDays: 4,
  },
  {
    key: 'coconut',
    paper: 'NF specification CO, issue 3',
    name: 'Coconut oil',
    like: 'coconut oil',
    supplier: 'Northmere Fats',
    density: '0.92',
    reorderBelow: '300',
    packSize: '1000',
    packPrice: '9.60',
    leadDays: 4,
  },
  {
    key: 'sunflower',
    paper: 'Pell Street declaration 311',
    origins: ['daisy-family'],
    name: 'Sunflower oil',
    like: 'sunflower',
    supplier: 'Pell Street Oils',
    density: '0.92',
    reorderBelow: '500',
    packSize: '1000',
    packPrice: '6.20',
    leadDays: 3,
  },
  {
    key: 'beeswax',
    paper: 'Pell Street declaration 298',
    origins: ['bee', 'animal'],
    name: 'Beeswax',
    like: 'beeswax',
    supplier: 'Pell Street Oils',
    density: '0.96',
    reorderBelow: '200',
    packSize: '500',
    packPrice: '11.50',
    leadDays: 3,
  },
  {
    key: 'starch',
    paper: 'Pell Street declaration 104',
    name: 'Rice starch',
    like: 'rice starch',
    supplier: 'Pell Street Oils',
    reorderBelow: '150',
    packSize: '500',
    packPrice: '4.30',
    leadDays: 3,
  },
  {
    key: 'tocopherol',
    paper: 'Pell Street declaration 207',
    name: 'Vitamin E',
    like: 'tocopherol',
    supplier: 'Pell Street Oils',
    density: '0.95',
    reorderBelow: '20',
    packSize: '100',
    packPrice: '8.90',
    leadDays: 3,
  },
  {
    key: 'orange',
    name: 'Sweet orange oil',
    like: 'sweet orange',
    supplier: 'Saltmarsh Scents',
    density: '0.85',
    reorderBelow: '20',
    packSize: '50',
    packPrice: '6.75',
    leadDays: 3,
    caution: 'Cap back on at once: it spoils in air.',
  },
  {
    key: 'cedar',
    name: 'Cedarwood oil',
    like: 'cedarwood',
    supplier: 'Saltmarsh Scents',
    density: '0.95',
    reorderBelow: '15',
    packSize: '50',
    packPrice: '9.10',
    leadDays: 3,
  },
  {
    key: 'lavender',
    name: 'Lavender oil',
    like: 'lavender',
    supplier: 'Saltmarsh Scents',
    density: '0.88',
    reorderBelow: '20',
    packSize: '50',
    packPrice: '12.40',
    leadDays: 3,
  },
  {
    key: 'peppermint',
    name: 'Peppermint oil',
    like: 'peppermint',
    supplier: 'Saltmarsh Scents',
    density: '0.90',
    reorderBelow: '15',
    packSize: '50',
    packPrice: '8.20',
    leadDays: 3,
    caution: 'Keep away from eyes.',
  },
];

export const PACKAGING = [
  {
    key: 'tin60',
    name: '60 ml tin',
    kind: 'tin',
    brimMl: '66',
    tareGrams: '11.4',
    reorderBelow: '30',
    packSize: '100',
    packPrice: '38.00',
    leadDays: 5,
  },
  {
    key: 'tin30',
    name: '30 ml tin',
    kind: 'tin',
    brimMl: '34',
    tareGrams: '8.2',
    reorderBelow: '20',
    packSize: '100',
    packPrice: '31.00',
    leadDays: 5,
  },
  {
    key: 'lid60',
    name: 'Lid for 60 ml',
    kind: 'lid',
    brimMl: null,
    tareGrams: '6.1',
    reorderBelow: '30',
    packSize: '100',
    packPrice: '14.00',
    leadDays: 5,
  },
  {
    key: 'lid30',
    name: 'Lid for 30 ml',
    kind: 'lid',
    brimMl: null,
    tareGrams: '4.3',
    reorderBelow: '20',
    packSize: '100',
    packPrice: '12.00',
    leadDays: 5,
  },
  {
    key: 'label60',
    name: 'Label pair 60 ml',
    kind: 'label',
    brimMl: null,
    tareGrams: null,
    reorderBelow: '40',
    packSize: '200',
    packPrice: '18.00',
    leadDays: 6,
  },
  {
    key: 'label30',
    name: 'Label pair 30 ml',
    kind: 'label',
    brimMl: null,
    tareGrams: null,
    reorderBelow: '30',
    packSize: '200',
    packPrice: '16.00',
    leadDays: 6,
  },
] as const;

export const CUSTOMERS = [
  { key: 'tamsin', name: 'O. Tamsin', address: '14 Pinfold Row, Wendle Cross WX4 7YA' },
  { key: 'aldous', name: 'R. Aldous', address: '2 The Ropewalk, Sallow Bay SB2 9QQ' },
  { key: 'woolgate', name: 'Wool Gate Corner (shop)', address: '31 Wool Gate, Harrowmere HM1 4ZZ' },
  { key: 'maes', name: 'L. Maes', address: '7 Chandler Court, Ballymoyle BT99 9YY' },
  { key: 'okoro', name: 'P. Okoro', address: '88 Long Drove, Fenny Toll FT6 2XX' },
] as const;
