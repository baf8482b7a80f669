import { type Html, raw } from './html.ts';

/**
 * Markup with its text changed, piece by piece between tags. Elements whose text takes no markup, such
 * as drawings and lists to choose from, stay as they are.
 */
export const changeText = ({ markup }: Html, change: (text: string) => string): Html =>
  raw(markup.replaceAll(PARTS, (part) => (part.startsWith('<') ? part : change(part))));

const PARTS = /<(svg|select|title|script|style|textarea)\b[\s\S]*?<\/\1>|<[^>]*>|[^<]+/g;
