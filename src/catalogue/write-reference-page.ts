import type { Calculation } from './define-calculation.ts';
import { describeFields, type FieldDescription } from './describe-fields.ts';

const inCell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

const fieldRow = ({ path, type, isRequired, range, about }: FieldDescription): string => {
  const isGiven = isRequired || range.includes('default');
  const facts = [type, range, isGiven ? '' : 'may be left out'].filter((fact) => fact !== '').join('; ');
  return `| \`${path}\` | ${inCell(about)} | ${inCell(facts)} |`;
};

const fieldTable = (title: string, fields: readonly FieldDescription[]): string =>
  [`| ${title} | meaning | type and range |`, '| --- | --- | --- |', ...fields.map(fieldRow)].join('\n');

const json = (value: unknown): string => JSON.stringify(value, null, 2);

function section(calculation: Calculation): string {
  const { name, title, summary, equation, validRange, sources, example } = calculation;
  const source = ({ text, confidence }: (typeof sources)[number]) => `- ${text} (${confidence})`;
  return [
    `## ${name}\n`,
    `**${title}.** ${summary}\n`,
    `Equation: \`${equation.replaceAll('`', "'")}\`\n`,
    `Holds for: ${validRange}\n`,
    `Sources:\n\n${sources.map(source).join('\n')}\n`,
    `${fieldTable('in', describeFields(calculation.input, 'input'))}\n`,
    `${fieldTable('out', describeFields(calculation.output, 'output'))}\n`,
    `\`\`\`sh\ngramwright calc ${name} '${JSON.stringify(example.input).replaceAll("'", "'\\''")}'\n\`\`\`\n`,
    `\`\`\`json\n${json(example.output)}\n\`\`\`\n`,
  ].join('\n');
}

/** The catalogue as a page to read: what each calculation takes and gives, by which equation, from which source. */
export function writeReferencePage(calculations: readonly Calculation[]): string {
  const rows = calculations.map(({ name, title }) => `| [${name}](#${name}) | ${inCell(title)} |`);
  return [
    '# The calculations\n',
    'Written from the program itself by `node scripts/write-calculation-docs.mjs`, after a build. Every example is run by the tests.\n',
    'Each runs on the command line (`gramwright calc NAME JSON`, or JSON on standard input), over HTTP (`POST /api/calc/NAME`)',
    'and behind every figure on screen. Only JSON goes to standard output; the status is 0 whatever the verdict, and 2 where',
    'the input is refused, with the problem on standard error.\n',
    'Confidence of a source: `read` (its text was seen), `read-secondary` (seen quoted), `computed` (from a definition),',
    '`derived` (judged from other values), `memory` (recalled, to be checked).\n',
    `| name | what |\n| --- | --- |\n${rows.join('\n')}\n`,
    ...calculations.map(section),
  ].join('\n');
}
