/**
 * Whether a terminal shows more than ASCII: where the locale names no character set of Unicode, as LANG=C
 * does, it may print two wrong signs for each other one. Where nothing is said, and on Windows, it does.
 */
export function hasAllSigns(
  platform: string,
  { LC_ALL, LC_CTYPE, LANG }: Readonly<Record<string, string | undefined>>,
): boolean {
  const locale = LC_ALL || LC_CTYPE || LANG || '';
  return platform === 'win32' || locale === '' || /utf-?8/i.test(locale);
}
