/**
 * A title in lines that fit a picture, broken at blanks.
 *
 * @param width  of the picture [px]
 */
export function wrapTitle(title: string, width: number): string[] {
  const most = Math.max(10, Math.floor(width / CHARACTER));
  const lines: string[] = [];
  let line = '';
  for (const word of title.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > most) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

const CHARACTER = 8.2; // px, bold at 13 px
