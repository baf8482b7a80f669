import { type Html, html, raw } from './html.ts';
import { isolateNames } from './isolate-names.ts';
import { type PagePermits, pagePolicy } from './page-policy.ts';

/** A page as it is sent, and the policy that stands in its head. */
export interface Document {
  readonly page: string;
  readonly policy: string;
}

/** A whole page: its policy, one style and its scripts around what is seen. */
export function documentFrame(
  title: Html,
  body: Html,
  permits: PagePermits,
  sha256: (text: string) => string,
): Document {
  const policy = pagePolicy(permits, sha256);
  const page = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${raw(permits.styles)}</style>
</head>
<body>
${isolateNames(body)}
${permits.scripts.map((script) => html`<script>${raw(script)}</script>`)}
</body>
</html>
`.markup;
  return { page, policy };
}
