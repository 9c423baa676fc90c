import type { z } from 'zod';
import type { productFiles, Saying } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { exact, toText } from '../../core/quantity/index.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { labelRule, sourceTitle } from './label-rule.ts';
import { type FileData, readFileData } from './read-file-data.ts';

type Field = z.output<typeof productFiles.productFileRoutes.getNotification.output>['fields'][number];
type Portal = 'GB' | 'EU';

const RULES = { GB: 'notification-gb', EU: 'notification-eu' } as const;

/** What the portals ask for, as the data has it. The tool sends nothing. */
export const getNotification: UseCase<'getNotification'> = async (
  context,
  { params: { id = '' }, query: { market } },
) => {
  const data = await readFileData(context, id);
  if (!data.ok) return data;
  const fields = fieldsOf(data.value, market);
  const rule = labelRule(RULES[market]);
  return done({
    productId: id,
    productName: data.value.product.name,
    sentence: saying('notify-says', {
      product: data.value.product.name,
      n: fields.filter(({ gap }) => gap !== null).length,
    }),
    rule: rule.rule,
    source: sourceTitle(rule.source),
    fields,
  });
};

const field = (key: string, code: string, text: string, gap = 'notify-gap-typed'): Field => ({
  key,
  label: saying(code),
  text,
  gap: text === '' ? saying(gap) : null,
});

/** What a person ticks: said as a word to copy. */
const YES_NO = { '': '', no: 'No', yes: 'Yes' } as const;

function fieldsOf(data: FileData, portal: Portal): Field[] {
  const { product, house, file } = data;
  const { notification } = file;
  const responsible = portal === 'GB' ? house.responsibleGb : house.responsibleEu;
  return [
    field('name', 'notify-name', product.name),
    field('category', 'notify-category', notification.category),
    field('responsible', 'notify-responsible', responsible.name, 'notify-gap-workshop'),
    field('address', 'notify-address', responsible.address, 'notify-gap-workshop'),
    field('contact', 'notify-contact', notification.contact),
    field('placed', 'notify-placed', portal === 'GB' ? 'Great Britain' : notification.placedIn),
    field('nano', 'notify-nano', YES_NO[notification.nanomaterials]),
    field('cmr', 'notify-cmr', YES_NO[notification.cmr]),
    formulaField(data),
  ];
}

/** Percents of what is sold, the largest first; a whole frame where that is how it is notified. */
function formulaField({ made, file: { notification } }: FileData): Field {
  if (notification.formulaAs === 'frame') return field('formula', 'notify-frame', notification.frame);
  const gap: Saying = saying(made === null ? 'notify-gap-formula' : 'notify-gap-inci');
  const shares = [...(made?.opened.expanded.materials ?? [])].sort((one, other) =>
    other.percent.cmp(one.percent),
  );
  const lines = shares.map(({ materialId, percent }) => ({
    inci: made?.opened.materials.get(materialId)?.inciEu ?? '',
    percent: toText(exact(percent).toDecimalPlaces(4)),
  }));
  const isWhole = lines.length > 0 && lines.every(({ inci }) => inci !== '');
  return {
    key: 'formula',
    label: saying('notify-exact'),
    text: isWhole ? lines.map(({ inci, percent }) => `${inci} ${percent} %`).join('\n') : '',
    gap: isWhole ? null : gap,
  };
}
