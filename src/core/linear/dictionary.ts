import { type Fraction, NOUGHT, UNIT } from './fraction.ts';

/** coefficients . x <= most */
export interface LinearRow {
  readonly coefficients: readonly Fraction[];
  readonly most: Fraction;
}

/** constant + the sum of coefficient x variable, over the variables that are not basic; the others count as nought. */
interface Form {
  constant: Fraction;
  readonly of: Map<number, Fraction>;
}

const emptyForm = (): Form => ({ constant: NOUGHT, of: new Map() });

/** Adds so many times another form. */
function add(form: Form, times: Fraction, other: Form): void {
  form.constant = form.constant.plus(times.times(other.constant));
  for (const [variable, coefficient] of other.of) addTerm(form, variable, times.times(coefficient));
}

function addTerm(form: Form, variable: number, coefficient: Fraction): void {
  const sum = (form.of.get(variable) ?? NOUGHT).plus(coefficient);
  if (sum.sign === 0) form.of.delete(variable);
  else form.of.set(variable, sum);
}

/**
 * Basic variables and what is maximised, each written by the others: x_B = b - A x_N. Variables are numbered: those of the
 * program from nought, then one slack for each row, then the helping one of the first phase.
 */
export class Dictionary {
  readonly #basic: Map<number, Form>;
  #aim: Form = emptyForm();

  private constructor(basic: Map<number, Form>) {
    this.#basic = basic;
  }

  /** `helping`: a variable that every row has once, with a minus. */
  static of(rows: readonly LinearRow[], variables: number, helping?: number): Dictionary {
    const basic = new Map<number, Form>();
    for (const [index, { coefficients, most }] of rows.entries()) {
      const form: Form = { constant: most, of: new Map() };
      for (const [variable, coefficient] of coefficients.entries())
        addTerm(form, variable, coefficient.negated());
      if (helping !== undefined) addTerm(form, helping, UNIT);
      basic.set(variables + index, form);
    }
    return new Dictionary(basic);
  }

  get value(): Fraction {
    return this.#aim.constant;
  }

  valueOf(variable: number): Fraction {
    return this.#basic.get(variable)?.constant ?? NOUGHT;
  }

  /** Of a slack: what one more of its row is worth. */
  priceOf(variable: number): Fraction {
    return (this.#aim.of.get(variable) ?? NOUGHT).negated();
  }

  /** What is maximised from now on, written by the variables that are not basic. */
  aimAt(objective: readonly Fraction[]): void {
    this.#aim = emptyForm();
    for (const [variable, coefficient] of objective.entries()) {
      const form = this.#basic.get(variable);
      if (form) add(this.#aim, coefficient, form);
      else addTerm(this.#aim, variable, coefficient);
    }
  }

  /** To the top; false where there is none. */
  climb(): boolean {
    for (;;) {
      const entering = lowest([...this.#aim.of].filter(([, coefficient]) => coefficient.sign > 0));
      if (entering === undefined) return true;
      const leaving = this.#findLeaving(entering);
      if (leaving === undefined) return false;
      this.#exchange(entering, leaving);
    }
  }

  /** Brings the helping variable in for the row that lies furthest outside: then every row lies inside. */
  enterWhereLowest(entering: number): void {
    const rows = [...this.#basic];
    const [leaving] = rows.reduce((low, row) => (row[1].constant.compare(low[1].constant) < 0 ? row : low));
    this.#exchange(entering, leaving);
  }

  /** Takes out a variable that is nought. */
  leaveOut(variable: number): void {
    const form = this.#basic.get(variable);
    const other = form && lowest([...form.of]);
    if (other !== undefined) this.#exchange(other, variable);
    this.#basic.delete(variable);
    for (const each of [...this.#basic.values(), this.#aim]) each.of.delete(variable);
  }

  /** The basic variable that comes to nought first as the entering one grows; the lowest of several. */
  #findLeaving(entering: number): number | undefined {
    let tightest: Fraction | undefined;
    let leaving: number | undefined;
    for (const [variable, { constant, of }] of this.#basic) {
      const coefficient = of.get(entering);
      if (coefficient === undefined || coefficient.sign >= 0) continue;
      const room = constant.over(coefficient.negated());
      const side = tightest === undefined ? -1 : room.compare(tightest);
      if (side < 0 || (side === 0 && variable < (leaving ?? variable))) {
        tightest = room;
        leaving = variable;
      }
    }
    return leaving;
  }

  /** Solves the leaving variable's row for the entering one, and writes every other row by it. */
  #exchange(entering: number, leaving: number): void {
    const row = this.#basic.get(leaving);
    const pivot = row?.of.get(entering);
    if (!row || !pivot) throw new Error('an exchange is between a row and a variable in it');
    const solved = emptyForm();
    row.of.delete(entering);
    add(solved, UNIT.over(pivot).negated(), row);
    addTerm(solved, leaving, UNIT.over(pivot));
    this.#basic.delete(leaving);
    for (const form of [...this.#basic.values(), this.#aim]) {
      const coefficient = form.of.get(entering);
      if (coefficient === undefined) continue;
      form.of.delete(entering);
      add(form, coefficient, solved);
    }
    this.#basic.set(entering, solved);
  }
}

const lowest = (entries: readonly (readonly [number, Fraction])[]): number | undefined =>
  entries.length === 0 ? undefined : Math.min(...entries.map(([variable]) => variable));
