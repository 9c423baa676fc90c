import { useId } from 'react';
import { reportWords } from '../../../words/index.ts';
import { readBase64 } from '../../api/read-base64.ts';
import { useWrite } from '../../api/use-write.ts';
import { buttonClass } from '../../parts/button-look.ts';
import { Problems } from '../../parts/problems.tsx';

interface Props {
  readonly reportId: string;
  readonly reference: string;
}

export function AttachFile({ reportId, reference }: Props) {
  const id = useId();
  const attach = useWrite('attachReportFile');
  async function take(file: File | undefined) {
    if (file)
      await attach.write({
        params: { id: reportId },
        body: { name: file.name, base64: await readBase64(file) },
      });
  }
  return (
    <div>
      <Problems problems={attach.problems} />
      <label htmlFor={id} className={buttonClass({})}>
        {reportWords.attach}
        <span className="visually-hidden"> {reference}</span>
      </label>
      <input
        id={id}
        className="visually-hidden"
        type="file"
        accept="application/pdf"
        onChange={(event) => void take(event.target.files?.[0])}
      />
    </div>
  );
}
