import type { ProblemWords } from './problem-words.ts';
import { awayProblems } from './problems/away.en-gb.ts';
import { certificateProblems } from './problems/certificates.en-gb.ts';
import { cliProblems } from './problems/cli.en-gb.ts';
import { complaintProblems } from './problems/complaints.en-gb.ts';
import { costProblems } from './problems/cost.en-gb.ts';
import { fillingProblems } from './problems/filling.en-gb.ts';
import { formulaProblems } from './problems/formula.en-gb.ts';
import { foundationProblems } from './problems/foundation.en-gb.ts';
import { keepingProblems } from './problems/keeping.en-gb.ts';
import { labelProblems } from './problems/label.en-gb.ts';
import { labelDeskProblems } from './problems/label-desk.en-gb.ts';
import { printProblems } from './problems/print.en-gb.ts';
import { productFileProblems } from './problems/product-files.en-gb.ts';
import { reachProblems } from './problems/reach.en-gb.ts';
import { safetyProblems } from './problems/safety.en-gb.ts';
import { serverProblems } from './problems/server.en-gb.ts';
import { stepProblems } from './problems/steps.en-gb.ts';
import { stockProblems } from './problems/stock.en-gb.ts';
import { webProblems } from './problems/web.en-gb.ts';
import { weighingProblems } from './problems/weighing.en-gb.ts';
import { workFillingProblems } from './problems/work-filling.en-gb.ts';
import { workFormulasProblems } from './problems/work-formulas.en-gb.ts';
import { workLabelProblems } from './problems/work-labels.en-gb.ts';
import { workMakingProblems } from './problems/work-making.en-gb.ts';
import { workOrdersProblems } from './problems/work-orders.en-gb.ts';
import { workStockProblems } from './problems/work-stock.en-gb.ts';
import { workWorkshopProblems } from './problems/work-workshop.en-gb.ts';
import { awaySayings } from './sayings/away.en-gb.ts';
import { certificateSayings } from './sayings/certificates.en-gb.ts';
import { complaintSayings } from './sayings/complaints.en-gb.ts';
import { fillingSayings } from './sayings/filling.en-gb.ts';
import { formulaSayings } from './sayings/formulas.en-gb.ts';
import { keepingSayings } from './sayings/keeping.en-gb.ts';
import { labelSayings } from './sayings/label.en-gb.ts';
import { labelCountSayings } from './sayings/label-counts.en-gb.ts';
import { lowWaterSayings } from './sayings/low-water.en-gb.ts';
import { makingSayings } from './sayings/making.en-gb.ts';
import { morningSayings } from './sayings/morning.en-gb.ts';
import { ordersSayings } from './sayings/orders.en-gb.ts';
import { productFileSayings } from './sayings/product-files.en-gb.ts';
import { promiseSayings } from './sayings/promise.en-gb.ts';
import { roomSayings } from './sayings/room.en-gb.ts';
import { scaleSayings } from './sayings/scales.en-gb.ts';
import { stockSayings } from './sayings/stock.en-gb.ts';
import { traceSayings } from './sayings/trace.en-gb.ts';

/** Every room's sentences; each file of problems/ and sayings/ stands here once (registry.test.ts looks). */
export const problemRooms: Readonly<Record<string, Readonly<Record<string, ProblemWords>>>> = {
  away: awayProblems,
  complaints: complaintProblems,
  productFiles: productFileProblems,
  certificates: certificateProblems,
  filling: fillingProblems,
  formula: formulaProblems,
  stock: stockProblems,
  steps: stepProblems,
  cli: cliProblems,
  cost: costProblems,
  label: labelProblems,
  labelDesk: labelDeskProblems,
  foundation: foundationProblems,
  keeping: keepingProblems,
  print: printProblems,
  reach: reachProblems,
  safety: safetyProblems,
  server: serverProblems,
  web: webProblems,
  weighing: weighingProblems,
  workFormulas: workFormulasProblems,
  workOrders: workOrdersProblems,
  workStock: workStockProblems,
  workWorkshop: workWorkshopProblems,
  workFilling: workFillingProblems,
  workLabels: workLabelProblems,
  workMaking: workMakingProblems,
};

export const sayingRooms: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  away: awaySayings,
  complaints: complaintSayings,
  productFiles: productFileSayings,
  certificates: certificateSayings,
  formulas: formulaSayings,
  keeping: keepingSayings,
  trace: traceSayings,
  room: roomSayings,
  scales: scaleSayings,
  stock: stockSayings,
  filling: fillingSayings,
  making: makingSayings,
  'low-water': lowWaterSayings,
  label: labelSayings,
  'label-counts': labelCountSayings,
  morning: morningSayings,
  orders: ordersSayings,
  promise: promiseSayings,
};

const gather = <Words>(
  rooms: Readonly<Record<string, Readonly<Record<string, Words>>>>,
): ReadonlyMap<string, Words> => new Map(Object.values(rooms).flatMap((room) => Object.entries(room)));

export const problems = gather(problemRooms);
export const sayings = gather(sayingRooms);
