import { stringify } from 'yaml';

/** A value as YAML on one line: names that people typed in quotes where they need them. */
export function inline(value: unknown): string {
  return stringify(value, {
    collectionStyle: 'flow',
    lineWidth: 0,
    flowCollectionPadding: true,
    defaultStringType: 'PLAIN',
    version: '1.2',
    aliasDuplicateObjects: false,
  }).trim();
}

/** Lines, each a step further in. */
export const indented = (lines: readonly string[]): string[] =>
  lines.map((line) => (line === '' ? '' : `  ${line}`));

/** A key with a value on its line, and a remark behind it. */
export function keyLine(key: string, value: unknown, remark = ''): string {
  return `${inline(key)}: ${inline(value)}${remark === '' ? '' : ` # ${remark}`}`;
}
