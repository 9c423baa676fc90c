/** What stands in brackets belongs to the name before it: "(Orange)", "[Nano]". */
const BRACKETED = /\([^()]*\)|\[[^[\]]*\]/g;

/** "(and)" and "[and]" join names as the word does, as suppliers' papers write blends. */
const JOINED = /\s*[([]\s*and\s*[)\]]\s*/gi;

/** A list goes on after a comma that is none of a chemical name, a semicolon, "and", "&", or a slash with blanks on both sides. */
const BETWEEN = /\s*;\s*|,\s+|(?<!\b[a-z\d]),(?!\d)|\s+(?:and|&|\+)\s+|\s+\/\s+|\s*\uE000\s*/i;

/** "Citrus Limon Peel Oil, Expressed": what follows the comma tells how the one thing was won. */
const HOW_IT_WAS_WON =
  /^(?:cold[- ]pressed|expressed|distilled|steam distilled|rectified|furocoumarin[- ]free|fcf|absolute|concrete|refined|hydrogenated|hydrolyzed|natural|synthetic|nano|organic|powder)$/i;

/** "Aqua / Water / Eau": one ingredient in several languages. */
const IN_LANGUAGES = /^(?:(?:aqua|water|eau)|(?:parfum|fragrance|aroma|flavou?r))$/i;

const isOneIngredient = (parts: readonly string[]): boolean =>
  parts.filter((part) => !HOW_IT_WAS_WON.test(part)).length < 2 ||
  parts.every((part) => IN_LANGUAGES.test(part));

/**
 * The ingredients that one label name holds: mostly one. A slash without blanks is part of a name (Caprylic/Capric
 * Triglyceride), and so is a comma in a chemical name (1,2-Hexanediol). Two and more are a blend written as one word, which no list
 * can put in its order: each ingredient is to be listed by its own mass (Regulation (EC) No 1223/2009, Article 19(1)(g);
 * 21 CFR 701.3).
 */
export function splitLabelName(labelName: string): string[] {
  const joined = labelName.replace(JOINED, '\uE000');
  const brackets: string[] = [];
  const bare = joined.replace(BRACKETED, (bracket) => `\uE001${brackets.push(bracket) - 1}\uE001`);
  const parts = bare
    .split(BETWEEN)
    .map((part) => part.replace(/\uE001(\d+)\uE001/g, (_, index) => brackets[Number(index)] ?? '').trim())
    .filter((part) => part !== '');
  return isOneIngredient(parts) ? [labelName.trim()] : parts;
}
