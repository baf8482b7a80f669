import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type HtmlPart, html, raw } from '../../../src/report/page/html.ts';
import { all, readMarkup, textOf } from './read-markup.ts';

const markup = (part: HtmlPart): string => html`${part}`.markup;

/** Any characters, those with a meaning in markup most often. */
const anyText = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        ...'<>&"\'/=! \n\t\u0000\u001b\u007f\u0085\u202e\u2066\ud800\udfff\uffff'.split(''),
      ),
      fc.string({ unit: 'binary' }),
    ),
  )
  .map((pieces) => pieces.join(''));

describe('text', () => {
  test.each([
    ['<b>', '&lt;b&gt;'],
    ['a & b', 'a &amp; b'],
    ['&lt;', '&amp;lt;'],
    ['"quoted" and \'quoted\'', "&quot;quoted&quot; and 'quoted'"],
    ['two\nlines\tand a tab', 'two\nlines\tand a tab'],
    ['nothing\u0000 at all', 'nothing  at all'],
    ['a bell\u0007, an escape\u001b, a next line\u0085', 'a bell , an escape , a next line '],
    ['half \ud83d a character', 'half   a character'],
    ['a whole \u{1f321}', 'a whole \u{1f321}'],
    ['turned \u202eround, \u200fisolated\u2069', 'turned \\u202eround, \\u200fisolated\\u2069'],
    ['no character \ufffe\uffff', 'no character   '],
  ])('%j', (text, expected) => expect(markup(text)).toBe(expected));

  test('whatever it is, makes no element and no attribute, and is read as it was', () => {
    fc.assert(
      fc.property(anyText, anyText, (title, text) => {
        const page = readMarkup(html`<p title="${title}">${text}<b>end</b></p>`.markup);
        const [p, b, ...more] = all(page);
        expect(more).toEqual([]);
        expect([p!.name, b!.name]).toEqual(['p', 'b']);
        expect(Object.keys(p!.attributes)).toEqual(['title']);
        const shown = (words: string) =>
          words
            .replaceAll(/(?![\n\t])\p{Cc}|\p{Cs}|\ufffe|\uffff/gu, ' ')
            .replaceAll(
              /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g,
              (mark) => `\\u${mark.codePointAt(0)!.toString(16).padStart(4, '0')}`,
            );
        expect(p!.attributes['title']).toBe(shown(title));
        expect(textOf(p!)).toBe(`${shown(text)}end`);
      }),
    );
  });
});

describe('parts', () => {
  test('numbers as they are, null as nothing, lists one after the other', () => {
    expect(markup([1, 0.5, 0, -3, 'a', null, ['b', [2]]])).toBe('10.50-3ab2');
    expect(markup([])).toBe('');
  });

  test('markup stays markup, however deep it is nested, and is not escaped twice', () => {
    const item = (text: string) => html`<li>${text}</li>`;
    const list = html`<ul>${['a<', 'b&'].map(item)}</ul>`;
    expect(html`<div>${[list, null]}</div>`.markup).toBe(
      '<div><ul><li>a&lt;</li><li>b&amp;</li></ul></div>',
    );
  });

  test('raw says that text is markup', () => {
    expect(markup(raw('<svg></svg>'))).toBe('<svg></svg>');
    expect(markup('<svg></svg>')).toBe('&lt;svg&gt;&lt;/svg&gt;');
  });

  test('the words of the template are not touched', () => {
    expect(html`<a href="x">&amp;</a>`.markup).toBe('<a href="x">&amp;</a>');
    expect(html``.markup).toBe('');
  });
});

test.each([
  ['a < b', 'no tag at "< b"'],
  ['<p>', '<p> is not closed at ""'],
  ['<p></b>', '</b> closes <p> at ""'],
  ['<p a=b></p>', '<p does not end at "=b></p>"'],
  ['<p a="1" a="2"></p>', 'a twice at "></p>"'],
  ['<p id="1"></p><b id="1"></b>', 'id 1 twice at "></b>"'],
  ['a & b', '"&" in "a & b"'],
])('the reader of these tests refuses %s', (text, words) => {
  expect(() => readMarkup(text)).toThrow(words);
});
