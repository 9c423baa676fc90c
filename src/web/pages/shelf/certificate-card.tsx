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
import type { Certificate } from './certificate-draft.ts';
import { CertificateForm } from './certificate-form.tsx';
import type { Lot } from './shelf-item.ts';

type Answer = AnswerOf<'listLotCertificates'>;
type Asked = { readonly corrected: Certificate | null };

/** What suppliers' papers say of this lot, and since when; of what was bought to go into something. */
export function CertificateCard({ lot }: { readonly lot: Lot }) {
  const [asked, setAsked] = useState<Asked | null>(null);
  const { data } = useRead('listLotCertificates', { params: { id: lot.id } });
  if (!data) return null;
  const standing = data.certificates.filter(({ isReplaced }) => !isReplaced);
  const replaced = data.certificates.filter(({ isReplaced }) => isReplaced);
  return (
    <Card title={words.title}>
      <p>
        <State kind={data.counts ? 'ready' : 'watch'}>
          <Sentence saying={data.sentence} />
        </State>
      </p>
      {data.means.map((each) => (
        <p key={JSON.stringify(each)}>
          <State kind={KINDS[each.code] ?? 'watch'}>
            <Sentence saying={each} />
          </State>
        </p>
      ))}
      {data.counts && <Counts counts={data.counts} />}
      <div>
        <Button onPress={() => setAsked({ corrected: null })}>
          {standing.length > 0 ? words.further : words.enter}
        </Button>
      </div>
      {standing.length > 0 && (
        <Disclosure title={words.papers}>
          {() =>
            standing.map((each) => (
              <PaperView key={each.id} certificate={each} onCorrect={() => setAsked({ corrected: each })} />
            ))
          }
        </Disclosure>
      )}
      {replaced.length > 0 && (
        <Disclosure title={words.earlier}>
          {() => replaced.map((each) => <PaperView key={each.id} certificate={each} />)}
        </Disclosure>
      )}
      {asked && <CertificateForm lot={lot} corrected={asked.corrected} onClose={() => setAsked(null)} />}
    </Card>
  );
}

const KINDS: Readonly<Record<string, 'ready' | 'stop'>> = {
  'ifra-statement-counts': 'ready',
  'ifra-statement-exceeded': 'stop',
  'lot-shakes-tins': 'stop',
};

type Counting = NonNullable<Answer['counts']>;

/** Of all papers together, each figure with the paper that it stands on. */
const Counts = ({ counts: { constituents, isComplete, peroxide, ifra } }: { readonly counts: Counting }) => (
  <>
    {constituents.length > 0 && (
      <Table
        caption={words.counts}
        rows={constituents}
        keyOf={({ name, cas }) => `${name} ${cas ?? ''}`}
        columns={[
          { head: words.columnName, cell: ({ name }) => name },
          { head: words.cas, cell: ({ cas }) => cas ?? '' },
          { head: words.columnAmount, cell: amountOf, isNumber: true },
          { head: words.ofPaper, cell: ({ paper }) => paper },
        ]}
      />
    )}
    <p>{isComplete ? words.complete : words.partial}</p>
    {peroxide && <p>{`${sayPeroxide(peroxide)} (${peroxide.paper})`}</p>}
    {ifra.map((statement) => (
      <p key={statement.category}>{`${words.ifraTitle}: ${sayStatement(statement)} (${statement.paper})`}</p>
    ))}
  </>
);

const amountOf = ({ leastPercent, mostPercent }: { leastPercent: string; mostPercent: string }): string =>
  leastPercent === mostPercent
    ? words.exactly(sayDecimal(mostPercent))
    : words.range(sayDecimal(leastPercent), sayDecimal(mostPercent));

const sayPeroxide = ({ mmolPerLitre, measuredOn }: NonNullable<Certificate['details']['peroxide']>): string =>
  `${words.peroxide}: ${words.peroxideIs(
    sayDecimal(mmolPerLitre),
    measuredOn === null ? '' : sayDateWithYear(measuredOn),
  )}`;

const sayStatement = ({ category, edition, mostPercent }: Certificate['details']['ifra'][number]): string =>
  words.ifraIs(category, edition, sayDecimal(mostPercent));

interface PaperProps {
  readonly certificate: Certificate;
  readonly onCorrect?: () => void;
}

const PaperView = ({ certificate, onCorrect }: PaperProps) => {
  const { id, reference, details, file, by, at } = certificate;
  const told = [
    ...details.constituents.map((one) => `${one.name} ${amountOf(one)}`),
    ...(details.peroxide ? [sayPeroxide(details.peroxide)] : []),
    ...details.ifra.map(sayStatement),
    ...(details.remark === '' ? [] : [details.remark]),
  ];
  return (
    <div>
      <p>
        <strong>{reference}</strong> {details.isComplete ? words.complete : ''}
      </p>
      <p>{told.join('; ')}</p>
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
      {onCorrect && <Button onPress={onCorrect}>{words.correct}</Button>}
    </div>
  );
};
