import type { z } from 'zod';
import { orders } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { listProducts } from '../../storage/index.ts';
import { printWords } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { localDate } from '../local-date.ts';
import { readProductDetails } from '../read-product-details.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { composeFileLabels, type FileLabel, labelPdf, labelTextFile } from './file-labels.ts';
import { paintWritten, sayMoment } from './lay-out-written.ts';
import { putMaterialPapers } from './material-papers.ts';
import { sayWords } from './say-words.ts';
import { readWorksheet, type Worksheet } from './worksheet.ts';
import { plainName, putFile, textFile, zipFolder } from './zip-folder.ts';

const { names } = printWords.written;

/** A formula, or a trial that is sold nowhere yet, as one file for the assessor. The tool sends nothing. */
export const getAssessorZip: UseCase<'getAssessorZip'> = async (context, { params: { id = '' } }) => {
  const sheet = await readWorksheet(context, id);
  if (!sheet.ok) return sheet;
  const house = await workshopDetails(context);
  const pdf = await paintWritten(names.worksheetPdf, sheet.value.paper, house);
  if (!pdf.ok) return pdf;
  const folder = new Map<string, Uint8Array>([[names.worksheetPdf, pdf.value.bytes]]);
  folder.set(names.data, textFile(JSON.stringify(dataOf(sheet.value), null, 2)));
  await putLabels(context, sheet.value, house.timeZone, folder);
  await putMaterialPapers(context, sheet.value.data.opened, folder);
  const { title, asOf } = sheet.value.paper;
  const index = [
    printWords.written.indexTitle(sayWords(title, house.timeZone)),
    printWords.written.notice,
    printWords.written.indexAsOf(sayMoment(asOf, house.timeZone)),
    '',
    ...[...folder.keys()].sort(),
  ];
  folder.set(names.index, textFile(index.join('\n')));
  return done({ fileName: `${sheet.value.fileName}.zip`, bytes: zipFolder(folder, asOf) });
};

/** The whole of what is known, for whoever works it out anew. */
const dataOf = ({ data, paper }: Worksheet) => ({
  asOf: paper.asOf,
  formula: data.opened.formula,
  revision: data.revision,
  bases: data.bases,
  materials: [...data.opened.expanded.materials].map(({ materialId, percent }) => ({
    materialId,
    percent: percent.toFixed(),
    details: data.opened.materials.get(materialId),
  })),
  check: data.check,
  pointsOfDeparture: data.points,
});

/** As it is planned: by the products that are filled from it; where there is none yet, by the formula alone. */
async function putLabels(
  context: Context,
  { data, paper }: Worksheet,
  timeZone: string,
  folder: Map<string, Uint8Array>,
): Promise<void> {
  const { formula } = data.opened;
  const products = (await listProducts(context.storage.db)).filter((row) => row.formula_id === formula.id);
  const of = { revisionId: data.revision.id, madeOn: localDate(paper.asOf, timeZone) };
  const put = async (labels: Promise<FileLabel[]>, name: string) => {
    for (const label of await labels) {
      const path = `${names.labels}/${plainName(name)}-${label.market}`;
      putFile(folder, `${path}.txt`, labelTextFile(label, timeZone));
      const pdf = await labelPdf(label, paper.asOf);
      if (pdf) putFile(folder, `${path}.pdf`, pdf);
    }
  };
  for (const row of products) {
    const details = readProductDetails(row.details);
    const { markets } = details;
    await put(composeFileLabels(context, { ...of, productId: row.id, details, markets }), row.name);
  }
  if (products.length > 0) return;
  const details = plannedProduct(formula);
  const markets = data.check.markets.map(({ market }) => market);
  await put(composeFileLabels(context, { ...of, productId: null, details, markets }), 'planned');
}

/** A product that nobody has entered yet: what has to be said of it stands as missing. */
const plannedProduct = ({
  id,
  name,
}: {
  readonly id: string;
  readonly name: string;
}): orders.ProductDetails =>
  orders.productDetails.parse({
    name,
    formulaId: id,
    declaredGrams: '1',
    tinId: 'planned',
    lidId: null,
    labelId: null,
    aimGrams: null,
    fillBasis: 'minimum',
    bowlLossPercent: '0',
    retainedGrams: '0',
    markets: ['GB'],
    functionText: '',
    precautions: '',
    bestBeforeMonths: 1,
    openedMonths: null,
    price: null,
    faceMm: SMALLEST_FACE,
    backMm: SMALLEST_FACE,
    isWithdrawn: false,
  } satisfies z.input<typeof orders.productDetails>);

const SMALLEST_FACE = { shape: 'round' as const, width: 10, height: 10 };
