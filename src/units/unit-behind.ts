/** What stands behind a number: a space and its unit; nothing where it has none. */
export const unitBehind = (unit: string): string => (unit === '' ? '' : ` ${unit}`);
