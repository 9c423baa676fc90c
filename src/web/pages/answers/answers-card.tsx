import { answerWords, say, sayDateWithYear, termWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { CopyButton } from '../../parts/copy-button.tsx';
import { State } from '../../parts/state.tsx';

type Answers = AnswerOf<'getProductAnswers'>;

/** "Has it got nuts in?", of the product as it is made now. */
export const ProductAnswers = ({ productId }: { readonly productId: string }) => {
  const { data } = useRead('getProductAnswers', { params: { id: productId } });
  return data ? <AnswersCard answers={data} /> : null;
};

/** The same of the tins with this batch number. */
export const RunAnswers = ({ runId }: { readonly runId: string }) => {
  const { data } = useRead('getRunAnswers', { params: { id: runId } });
  return data ? <AnswersCard answers={data} /> : null;
};

const AnswersCard = ({ answers }: { readonly answers: Answers }) => (
  <Card title={answerWords.title} anchor="origins">
    <Origins origins={answers.origins} />
    <p className="soft small">
      {answers.batchNumber === null ? answerWords.asMade : answerWords.ofBatch(answers.batchNumber)}{' '}
      {answerWords.traces}
    </p>
    {answers.ingredients.map((list) => (
      <Ingredients key={list.market} answers={answers} list={list} />
    ))}
  </Card>
);

type List = Answers['ingredients'][number];

const Ingredients = ({ answers, list }: { readonly answers: Answers; readonly list: List }) => {
  const { market, text, missing, printed } = list;
  const toCopy =
    printed && printed.onlyNow.length > 0 ? `${text}\n${answerWords.alsoNow(printed.onlyNow)}` : text;
  return (
    <div>
      <p>
        <strong>{answerWords.ingredients(termWords.market[market])}:</strong> {text}
      </p>
      {answers.batchNumber !== null && <Printed printed={printed} />}
      {missing ? (
        <State kind="watch">{say(missing)}</State>
      ) : (
        <p>
          <CopyButton text={toCopy}>{answerWords.copyIngredients}</CopyButton>{' '}
          <CopyButton
            text={answerWords.text(answers.productName, answers.batchNumber, toCopy, answers.origins)}
          >
            {answerWords.copyAll}
          </CopyButton>
        </p>
      )}
    </div>
  );
};

/** The customer holds the tin: what it says, and where papers that came since say otherwise. */
function Printed({ printed }: { readonly printed: List['printed'] }) {
  if (printed === null) return <p className="soft small">{answerWords.nothingPrinted}</p>;
  const day = sayDateWithYear(printed.at.slice(0, 10));
  if (printed.is === 'same') return <p className="soft small">{answerWords.asPrinted(day)}</p>;
  return (
    <p>
      <State kind="watch">
        {printed.is === 'other'
          ? answerWords.printedOther(day, printed.onlyOnLabel, printed.onlyNow)
          : answerWords.printedNotKept(day)}
      </State>
    </p>
  );
}

/** By word and shape: what is in it to be seen first, what is not known to be asked after. */
export const Origins = ({ origins }: { readonly origins: Answers['origins'] }) => {
  const hasSome = origins.some((row) => row.verdict === 'contains');
  const hasOpen = origins.some((row) => row.verdict === 'unknown');
  return <State kind={hasOpen || hasSome ? 'watch' : 'ready'}>{answerWords.sentence(origins)}</State>;
};
