/** What a page may do; whatever is not named it may not. */
export interface PagePermits {
  readonly styles: string;
  readonly scripts: readonly string[];
  /** Whether it runs the home again, in workers made of what it holds, as WebAssembly. */
  readonly runs: boolean;
  /** Whether it hears from the server that it came from. */
  readonly follows: boolean;
  /** Whether it sends a form there. */
  readonly sends: boolean;
}

/**
 * A page's security policy. It lets nothing in from anywhere: one style, and scripts by their hashes,
 * no code made of text, and no network but the page's own server, where it has one.
 *
 * @param sha256  SHA-256 of a text in UTF-8, base64
 */
export function pagePolicy(
  { styles, scripts, runs, follows, sends }: PagePermits,
  sha256: (text: string) => string,
): string {
  const hash = (text: string): string => `'sha256-${sha256(text)}'`;
  return [
    `default-src 'none'; style-src ${hash(styles)}`,
    ...(scripts.length > 0
      ? [`script-src ${scripts.map(hash).join(' ')}${runs ? " 'wasm-unsafe-eval'" : ''}`]
      : []),
    ...(runs ? ['worker-src blob:'] : []),
    ...(follows ? ["connect-src 'self'"] : []),
    `base-uri 'none'; form-action ${sends ? "'self'" : "'none'"}`,
  ].join('; ');
}
