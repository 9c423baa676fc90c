import { type Calculation, describeFields, type FieldDescription } from '../catalogue/index.ts';
import { cliWords } from '../words/index.ts';

const words = cliWords.calculation;

function fieldLine({ path, type, isRequired, range, about }: FieldDescription): string {
  const facts = [type, range, isRequired || range.includes('default') ? '' : words.optional];
  return `  ${path}\n      ${about}\n      ${facts.filter((fact) => fact !== '').join('; ')}`;
}

/** Everything that is known of a calculation, for reading in a terminal. */
export function describeCalculation(calculation: Calculation): string {
  const { name, title, summary, equation, validRange, sources, example } = calculation;
  const fields = (shape: typeof calculation.input, io: 'input' | 'output') =>
    describeFields(shape, io).map(fieldLine);
  const source = ({ text, confidence }: (typeof sources)[number]) =>
    `  ${text}${confidence === 'memory' ? ` (${words.fromMemory})` : ''}`;
  return [
    `${title}\n\n${summary}\n`,
    `${words.equation}\n  ${equation}\n`,
    `${words.validRange}\n  ${validRange}\n`,
    `${words.sources}\n${sources.map(source).join('\n')}\n`,
    `${words.input}\n${fields(calculation.input, 'input').join('\n')}\n`,
    `${words.output}\n${fields(calculation.output, 'output').join('\n')}\n`,
    `${words.example}\n  gramwright calc ${name} '${JSON.stringify(example.input)}'\n${JSON.stringify(example.output, null, 2)}\n`,
  ].join('\n');
}
