/**
 * Text in the characters that every terminal has (ASCII): signs as they are typed ("20 C", "ug/m3", "-"),
 * letters without their accents, and ? for what has no like.
 */
export function plainText(text: string): string {
  const typed = text.replaceAll(NOT_PLAIN, (sign) => TYPED[sign] ?? sign);
  return typed
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(NOT_PLAIN, (sign) => TYPED[sign] ?? '?');
}

const NOT_PLAIN = /\P{ASCII}/gu;

const TYPED: Readonly<Record<string, string>> = {
  ...{ '°': '', µ: 'u', μ: 'u', '×': 'x', '÷': '/', '±': '+/-', '·': '.', '→': '->' },
  ...{ '−': '-', '–': '-', '—': '-', '…': '...', '“': '"', '”': '"', '‘': "'", '’': "'" },
  ...{ ß: 'ss', æ: 'ae', ø: 'o', Æ: 'AE', Ø: 'O', ł: 'l', Ł: 'L' },
};
