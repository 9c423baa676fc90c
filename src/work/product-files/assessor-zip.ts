import type { z } from 'zod';
import { orders } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { listProducts } from '../../storage/index.ts';
import { printWords } from '../../words/index.ts';
import type { Context } from '../context.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { writeLabelText } from './label-texts.ts';
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
  await putLabels(context, sheet.value, folder);
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
  { data }: Worksheet,
  folder: Map<string, Uint8Array>,
): Promise<void> {
  const products = (await listProducts(context.storage.db)).filter(
    (row) => row.formula_id === data.opened.formula.id,
  );
  if (products.length === 0) {
    const { name } = data.opened.formula;
    for (const { market } of data.check.markets) {
      const text = await writeLabelText(
        context,
        plannedProduct(data.opened.formula),
        data.revision.id,
        market,
      );
      folder.set(`${names.labels}/planned-${market}.txt`, textFile(`${name}\n${text}`));
    }
  }
  for (const row of products) {
    const details = JSON.parse(row.details) as orders.ProductDetails;
    for (const market of details.markets) {
      const text = await writeLabelText(context, details, data.revision.id, market);
      putFile(
        folder,
        `${names.labels}/${plainName(row.name)}-${market}.txt`,
        textFile(`${row.name}\n${text}`),
      );
    }
  }
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
