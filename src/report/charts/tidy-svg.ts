import { escaped, printable } from '../escaped.ts';
import { wrapTitle } from './wrap-title.ts';

/** What an SVG says of itself. */
export interface Caption {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  /** Whether the title is drawn above, in dark ink on white; else the ink is that of the page around. */
  readonly standalone: boolean;
}

/**
 * A drawn picture made ready for a page: one image with a title and a description instead of many
 * parts read out one by one, coordinates to a tenth of a pixel, nothing invisible, ids that are
 * the document's own, and no character that a page must not hold.
 */
export function tidySvg(svg: string, { id, title, description, standalone }: Caption): string {
  const [head = '', ...rest] = svg.split(/(?<=^<svg[^>]*>)/);
  const [, width = '', height = ''] = /width="([\d.]+)" height="([\d.]+)"/.exec(head) ?? [];
  const body = rest
    .join('')
    .replaceAll(HIDDEN, '')
    .replaceAll(/<[^>]*>/g, tidyTag)
    .replaceAll(/(<g>)(<\/g>)/g, '');
  const lines = standalone ? wrapTitle(title, Number(width)) : [];
  const above = lines.length * LINE + (standalone ? 8 : 0);
  const tall = Number(height) + above;
  return printable(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${tall}" ` +
      `viewBox="0 0 ${width} ${tall}"${standalone ? ` color="${DARK}"` : ''} role="img" ` +
      `aria-labelledby="${id}-title" aria-describedby="${id}-desc">` +
      `<title id="${id}-title">${escaped(title)}</title>` +
      `<desc id="${id}-desc">${escaped(description)}</desc>` +
      (standalone ? onPaper(lines, above, body) : body),
  );

  /** Only what stands inside a tag is touched: texts are the person's. */
  function tidyTag(tag: string): string {
    return tag
      .replaceAll(/ (?:role|aria-[a-z]+|class|pointer-events)="[^"]*"/g, '')
      .replaceAll(/ (?:d|transform|x|y|x1|x2|y1|y2|width|height)="[^"]*"/g, rounded)
      .replaceAll(/(?<=id="|url\(#)(?=clip\d)/g, `${id}-`);
  }
}

/** A drawing on white, its title above it. */
function onPaper(lines: readonly string[], above: number, body: string): string {
  const texts = lines.map((line, k) => `<text x="2" y="${(k + 1) * LINE}">${escaped(line)}</text>`);
  return (
    `<rect width="100%" height="100%" fill="${PAPER}"/>` +
    `<g font-family="system-ui, sans-serif" font-size="13px" font-weight="bold" fill="${DARK}">` +
    `${texts.join('')}</g>` +
    body.replace(/^/, `<g transform="translate(0,${above})">`).replace(/(?=<\/svg>$)/, '</g>')
  );
}

/** Labels that gave way to others, and frames that nobody sees. */
const HIDDEN =
  /<text [^>]*opacity="0">[^<]*<\/text>|<path [^>]*display="none"\/>|<path class="background" aria-hidden="true" d="[^"]*"(?: pointer-events="none")?\/>/g;

const rounded = (attribute: string): string =>
  attribute.replaceAll(/-?\d*\.?\d+(?:e[-+]?\d+)?/g, (number, at: number) =>
    // The name of an attribute such as x1 is no number.
    at < attribute.indexOf('"') ? number : String(Math.round(Number(number) * 10) / 10 + 0),
  );

const LINE = 16; // px
const DARK = '#1c1f24';
const PAPER = '#ffffff';
