import type { productFiles } from '../../contract/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { findProduct, giveUp, listLinkedAttachments, type Writer } from '../../storage/index.ts';
import { keepDetails } from '../keep-details.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { findExposureType } from './exposure-basis.ts';

export const saveProductFile: UseCase<'saveProductFile'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const product = await findProduct(tx, id);
      if (!product) giveUp(thingNotFound('id', id));
      const problems = await judgeDetails(tx, id, body.details);
      if (problems.length > 0) giveUp(...problems);
      await tell({
        kind: 'product-file-written',
        subjectKind: 'product-file',
        subjectId: id,
        payload: body.details,
      });
      const { details, version: seen } = body;
      await keepDetails(tx, 'product_file', { productId: id, name: product.name, details, seen });
      return id;
    },
    viewId,
  );

async function judgeDetails(
  tx: Writer,
  id: string,
  { exposureType, claims, hasNoClaims }: productFiles.ProductFileDetails,
): Promise<Problem[]> {
  const files = new Set((await listLinkedAttachments(tx, 'product', id)).map((file) => file.id));
  return [
    ...(exposureType !== '' && !findExposureType(exposureType)
      ? [problem('exposure-type-unknown', 'details.exposureType', { found: exposureType })]
      : []),
    ...(hasNoClaims && claims.length > 0
      ? [problem('claims-and-none', 'details.hasNoClaims', { found: claims.length })]
      : []),
    ...claims.flatMap(({ attachmentId }, index) =>
      attachmentId === null || files.has(attachmentId)
        ? []
        : [thingNotFound(`details.claims[${index}].attachmentId`, attachmentId)],
    ),
  ];
}
