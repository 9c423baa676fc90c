import {
  type LabelRule,
  labelRuleSources,
  labelRules,
  usLabelRuleSources,
  usLabelRules,
} from '../../reference/index.ts';

const RULES = new Map([...labelRules, ...usLabelRules].map((rule) => [rule.id, rule]));
const SOURCES = new Map(
  [...labelRuleSources, ...usLabelRuleSources].map((source) => [source.id, source.title]),
);

/** A rule of the tables by its name. One that is not there is a mistake of ours. */
export function labelRule(id: string): LabelRule {
  const rule = RULES.get(id);
  if (!rule) throw new Error(`the tables have no rule ${id}`);
  return rule;
}

export const sourceTitle = (id: string): string => SOURCES.get(id) ?? id;

/** The rule as a heading: with a capital, as the law's own headings have. */
export const ruleAsHeading = (id: string): string => {
  const { rule } = labelRule(id);
  return `${rule.slice(0, 1).toUpperCase()}${rule.slice(1)}`;
};
