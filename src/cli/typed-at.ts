/** How a terminal has text written, and null where it shows all signs; loaded where there is a terminal. */
export async function typedAt(
  platform: string,
  env: Environment,
): Promise<((text: string) => string) | null> {
  if (hasAllSigns(platform, env)) return null;
  return (await import('../units/plain-text.ts')).plainText;
}

/**
 * Whether a terminal shows more than ASCII: where the locale names no character set of Unicode, as LANG=C
 * does, it may print two wrong signs for each other one. Where nothing is said, and on Windows, it does.
 */
function hasAllSigns(platform: string, { LC_ALL, LC_CTYPE, LANG }: Environment): boolean {
  const locale = LC_ALL || LC_CTYPE || LANG || '';
  return platform === 'win32' || locale === '' || /utf-?8/i.test(locale);
}

type Environment = Readonly<Record<string, string | undefined>>;
