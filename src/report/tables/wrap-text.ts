import { visibleProse } from '../../units/visible-text.ts';

/**
 * Text broken into lines of at most `width` characters between words; a longer word stays whole.
 *
 * @param first  set before the first line, such as a bullet; later lines are set under its end
 */
export function wrapText(text: string, first: string, width: number): string {
  const indent = ' '.repeat(first.length);
  const lines: string[] = [];
  let line = first;
  for (const word of visibleProse(text).split(/ +/)) {
    const fits = line.length + word.length + 1 <= width;
    if (line === first || line === indent) line += word;
    else if (fits) line += ` ${word}`;
    else {
      lines.push(line);
      line = indent + word;
    }
  }
  return [...lines, line].join('\n').trimEnd();
}
