export const morningWords = {
  title: 'This morning',
  at: (day: string, time: string) => `${day}, ${time}. Everything below counts released lots only.`,
  send: 'Send today',
  make: 'Make next',
  buy: 'Buy this week',
  count: (count: number) => (count === 1 ? '1 line' : `${count} lines`),
  nothing: {
    send: 'No order can go today.',
    make: 'Nothing needs making for what is ordered.',
    buy: 'Nothing runs short for what is ordered.',
  },
  newOrder: 'Enter an order',
} as const;
