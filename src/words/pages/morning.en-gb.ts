import { sayDecimal } from '../say-figure.ts';

export const morningWords = {
  title: 'This morning',
  at: (day: string, time: string) => `${day}, ${time}. Everything below counts released lots only.`,
  send: 'Send today',
  make: 'Make next',
  buy: 'Buy this week',
  papers: 'Papers to see to',
  count: (count: number) => (count === 1 ? '1 line' : `${sayDecimal(count)} lines`),
  nothing: {
    send: 'No order can go today.',
    make: 'Nothing needs making for what is ordered.',
    buy: 'Nothing runs short for what is ordered.',
  },
  ordered: {
    mark: 'It is ordered',
    change: 'Change the order',
    title: (material: string) => `${material}: ordered`,
    says: 'The list then says that it is on its way, until goods of it are received.',
    supplier: 'Ordered from',
    orderedOn: 'Ordered on',
    expectedOn: 'Expected on',
    keep: 'Enter it',
    marked: 'It stands on the list as on its way.',
    unmark: 'Nothing is on its way',
    unmarked: 'It stands on the list as to be bought.',
  },
  newOrder: 'Enter an order',
  how: 'How this was worked out',
  worked: [
    'Open orders are served one after the other, the first wanted first, each from released tins that are within their date.',
    'What is then missing is made: from a base that is firm, or from one that sets, counted with its shortest and its longest time.',
    'What still runs short for that, or lies below the mark set on a material, is to be bought.',
  ],
} as const;
