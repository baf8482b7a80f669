import type { Answer } from '../../studies/compare/answer-in-words.ts';
import { wrapText } from './wrap-text.ts';

/** The answer of a comparison for a screen: a paragraph, then a list under each opening. */
export function answerText({ sentences, trades }: Answer, width: number): string {
  const lists = trades.flatMap(({ opening, trades: items }) => [
    wrapText(`${opening}:`, '', width),
    ...items.map((item) => wrapText(item, '- ', width)),
  ]);
  return [wrapText(sentences.join(' '), '', width), ...lists].join('\n');
}
