/** What shows that a text is no text, in words; null where it looks like text. */
export function binarySign(text: string): string | null {
  if (text.startsWith('PK\u0003\u0004')) return 'a zip archive or spreadsheet';
  if (GZIP.some((start) => text.startsWith(start))) return 'gzip-compressed data';
  const head = text.slice(0, HEAD);
  const nul = head.indexOf('\u0000');
  if (nul >= 0) return `binary data (a zero byte at character ${nul + 1})`;
  let strange = 0;
  for (let k = 0; k < head.length; k++) {
    const code = head.charCodeAt(k);
    if (code === REPLACEMENT || (code < 32 && !WHITE.has(code))) strange++;
  }
  return strange > head.length * 0.02 ? 'binary data' : null;
}

const GZIP = ['\u001f\u008b', '\u001f\ufffd']; // as Latin-1, and as broken UTF-8
const HEAD = 8192;
const REPLACEMENT = 0xfffd;
const WHITE = new Set([9, 10, 12, 13]);
