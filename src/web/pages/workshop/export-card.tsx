import { workshopWords } from '../../../words/index.ts';
import { requestUrl } from '../../api/request-url.ts';
import { buttonClass } from '../../parts/button-look.ts';
import { Card } from '../../parts/card.tsx';
import { FormActions } from '../../parts/form-actions.tsx';

const { exports: words } = workshopWords;

export const ExportCard = () => (
  <Card title={words.title}>
    <p className="soft">{words.about}</p>
    <FormActions>
      <a className={buttonClass({})} href={requestUrl('exportJson')} download="gramwright.json">
        {words.json}
      </a>
      <a className={buttonClass({})} href={requestUrl('exportCsv')} download="gramwright.zip">
        {words.csv}
      </a>
    </FormActions>
  </Card>
);
