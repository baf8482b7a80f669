import { changeText } from './change-text.ts';
import type { Html } from './html.ts';

/**
 * Markup in which words of scripts that run from right to left stand by themselves (`bdi`), so that
 * a figure or a full stop after a name does not change sides with it.
 */
export const isolateNames = (page: Html): Html =>
  LETTER.test(page.markup)
    ? changeText(page, (text) => text.replaceAll(WORDS, (words) => `<bdi>${words}</bdi>`))
    : page;

const LETTERS = String.raw`[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Nko}\p{Script=Syriac}\p{Script=Thaana}]`;
const LETTER = new RegExp(LETTERS, 'u');
/** Words with what stands between them and belongs to them. */
const WORDS = new RegExp(String.raw`${LETTERS}(?:[\p{M}\s'’_-]*${LETTERS})*\p{M}*`, 'gu');
