/** Drawing PDF costs a third of the program's start: it is loaded when the first paper or label is asked for. */
export const painter = () => import('../print/paint/index.ts');
