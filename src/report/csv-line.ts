/** One line of CSV, without its end: fields as RFC 4180 has them, commas between. */
export function csvLine(fields: readonly string[]): string {
  return fields.map(quoted).join(',');
}

/**
 * A field that holds what a person typed, so that no spreadsheet takes it for a formula: what begins
 * like one gets an apostrophe in front. So does what begins with an apostrophe, which makes the rule
 * one that can be undone: a first apostrophe is never part of the name.
 */
export function typedField(text: string): string {
  return LIKE_A_FORMULA.test(text) ? `'${text}` : text;
}

/** What was typed, of a field that `typedField` made. */
export const typedText = (field: string): string =>
  field.startsWith("'") ? field.slice(1) : field;

/** Quoted where it holds a comma, a quote or a line break. */
function quoted(field: string): string {
  return /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
}

/** Text that a spreadsheet takes for a formula, the full-width signs that some of them accept included. */
const LIKE_A_FORMULA = /^[=+\-@\t\r\n＝＋－＠']/;
