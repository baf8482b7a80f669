/**
 * Text in the characters that every terminal has (ASCII): signs as they are typed ("20 C", "ug/m3", "-"),
 * letters without their accents, and ? for what has no like. Where a sign takes more or less room so, the
 * blanks behind it, two or more, make up for it: columns of a table stay below their heads.
 */
export function plainText(text: string): string {
  let owed = 0;
  return text
    .split(GAP)
    .map((piece, k) => {
      if (k % 2 === 1) {
        const room = Math.max(1, piece.length + owed);
        owed += piece.length - room;
        return ' '.repeat(room);
      }
      const typed = typedText(piece);
      owed = (piece.includes('\n') ? 0 : owed) + lastLength(piece) - lastLength(typed);
      return typed;
    })
    .join('');
}

function typedText(text: string): string {
  const typed = text
    .replaceAll(DEGREES, ' deg')
    .replaceAll(NOT_PLAIN, (sign) => TYPED[sign] ?? sign);
  return typed
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(NOT_PLAIN, (sign) => TYPED[sign] ?? '?');
}

/** Characters of the last line. */
const lastLength = (text: string): number => [...text.slice(text.lastIndexOf('\n') + 1)].length;

/** Blanks between columns. */
const GAP = /( {2,})/;
/** Of an angle, not of Celsius. */
const DEGREES = /[ \u00a0]?°(?!\p{L})/gu;
const NOT_PLAIN = /\P{ASCII}/gu;

const TYPED: Readonly<Record<string, string>> = {
  ...{ '°': '', µ: 'u', μ: 'u', '×': 'x', '÷': '/', '±': '+/-', '·': '.', '→': '->', '⁄': '/' },
  ...{ '−': '-', '–': '-', '—': '-', '…': '...', '“': '"', '”': '"', '‘': "'", '’': "'" },
  ...{ ß: 'ss', æ: 'ae', ø: 'o', Æ: 'AE', Ø: 'O', ł: 'l', Ł: 'L' },
};
