import { useState } from 'react';
import { sayDateWithYear, sayDecimal, certificateWords as words } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import { CertificateForm } from './certificate-form.tsx';
import type { Lot } from './shelf-item.ts';

type Certificate = AnswerOf<'listLotCertificates'>['certificates'][number];

/** What the supplier's paper says of this lot, and since when; of what was bought to go into something. */
export function CertificateCard({ lot }: { readonly lot: Lot }) {
  const [isAsked, setAsked] = useState(false);
  const { data } = useRead('listLotCertificates', { params: { id: lot.id } });
  if (!data) return null;
  const [counting, ...earlier] = data.certificates;
  return (
    <Card title={words.title}>
      <p>
        <State kind={counting ? 'ready' : 'watch'}>
          <Sentence saying={data.sentence} />
        </State>
      </p>
      {data.means.map((each) => (
        <p key={JSON.stringify(each)}>
          <State kind={each.code === 'ifra-statement-counts' ? 'ready' : 'watch'}>
            <Sentence saying={each} />
          </State>
        </p>
      ))}
      {counting && <CertificateView certificate={counting} />}
      <Button onPress={() => setAsked(true)}>{counting ? words.correct : words.enter}</Button>
      {earlier.length > 0 && (
        <Disclosure title={words.earlier}>
          {() =>
            earlier.map((each) => (
              <div key={each.id}>
                <p>
                  {each.reference} · <span className="soft">{words.replaced}</span>
                </p>
                <CertificateView certificate={each} />
              </div>
            ))
          }
        </Disclosure>
      )}
      {isAsked && (
        <CertificateForm
          lot={lot}
          earlierFile={counting?.file?.name ?? null}
          onClose={() => setAsked(false)}
        />
      )}
    </Card>
  );
}

type Constituent = Certificate['details']['constituents'][number];

const amountOf = ({ leastPercent, mostPercent }: Constituent): string =>
  leastPercent === mostPercent
    ? words.exactly(sayDecimal(mostPercent))
    : words.range(sayDecimal(leastPercent), sayDecimal(mostPercent));

const CertificateView = ({
  certificate: { id, reference, details, file, by, at },
}: {
  readonly certificate: Certificate;
}) => (
  <>
    {details.constituents.length > 0 && (
      <Table
        caption={reference}
        isCaptionHidden
        rows={details.constituents}
        keyOf={({ name, cas }) => `${name} ${cas ?? ''}`}
        columns={[
          { head: words.columnName, cell: ({ name }) => name },
          { head: words.cas, cell: ({ cas }) => cas ?? '' },
          { head: words.columnAmount, cell: amountOf, isNumber: true },
        ]}
      />
    )}
    <p>
      {details.isComplete ? words.complete : words.partial}
      {details.peroxide &&
        ` · ${words.peroxide}: ${words.peroxideIs(
          sayDecimal(details.peroxide.mmolPerLitre),
          details.peroxide.measuredOn === null ? '' : sayDateWithYear(details.peroxide.measuredOn),
        )}`}
    </p>
    {details.ifra.length > 0 && (
      <p>
        {words.ifraTitle}:{' '}
        {details.ifra
          .map(({ category, edition, mostPercent }) =>
            words.ifraIs(category, edition, sayDecimal(mostPercent)),
          )
          .join('; ')}
      </p>
    )}
    {details.remark !== '' && <p>{details.remark}</p>}
    <p className="soft small">
      {words.enteredBy(by)}, {sayDateWithYear(at.slice(0, 10))}
    </p>
    {file && (
      <p>
        <PrintLink paper="getLotCertificateFile" address={{ params: { id } }}>
          {words.openFile}
        </PrintLink>
      </p>
    )}
  </>
);
