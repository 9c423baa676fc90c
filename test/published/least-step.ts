/** The next larger and the next smaller double: no JSON number lies between it and the one given. */
const view = new DataView(new ArrayBuffer(8));

function neighbour(value: number, by: 1n | -1n): number {
  view.setFloat64(0, value);
  view.setBigInt64(0, view.getBigInt64(0) + by);
  return view.getFloat64(0);
}

export const justAbove = (value: number): number => neighbour(value, 1n);
export const justBelow = (value: number): number => neighbour(value, -1n);
