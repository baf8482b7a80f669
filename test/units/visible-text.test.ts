import { expect, test } from 'vitest';
import {
  visibleProse,
  visibleText,
  visibleValue,
  withoutTurns,
} from '../../src/units/visible-text.ts';

const BIDI = [0x61c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e]; // Unicode 15.1, Bidi_Control
const ISOLATES = [0x2066, 0x2067, 0x2068, 0x2069];
const CONTROLS = Array.from({ length: 0xa0 }, (_, code) => code).filter(
  (code) => (code < 0x20 || code >= 0x7f) && code !== 9 && code !== 10,
);
const codeOf = (code: number) => `\\u${code.toString(16).padStart(4, '0')}`;

test.each([...CONTROLS, ...BIDI, ...ISOLATES, 0x2028, 0x2029, 0xd800, 0xdfff])(
  'code %i is shown as its number',
  (code) => {
    expect(visibleText(`a${String.fromCharCode(code)}b`)).toBe(`a${codeOf(code)}b`);
    expect(visibleValue(String.fromCharCode(code))).toBe(codeOf(code));
  },
);

test('whatever is seen stays, of any script', () => {
  const text = 'Küche №2, 浴室, غرفة, חדר, 🌡️👩‍🔧 \u00a0·\u00ad—';
  expect(visibleText(text)).toBe(text);
  expect(visibleText('two\nlines\tand a tab')).toBe('two\nlines\tand a tab');
});

test('within a value, breaks and tabs are shown too; in prose they are blanks', () => {
  expect(visibleValue('two\nlines\tand\r')).toBe('two\\u000alines\\u0009and\\u000d');
  expect(visibleProse('two\nlines\tand\u001b')).toBe('two lines and\\u001b');
});

test('JSON means what it meant', () => {
  const value = { 'a\u202e\\': ['\u0085\n', '\\\u009b', '\u{1f321}\ud800', '"\u2028'] };
  const printed = visibleText(JSON.stringify(value, null, 2));
  expect(JSON.parse(printed)).toEqual(value);
  expect(printed).toMatch(/^[\n\u0020-\u007e]*(?:\u{1f321}[\n\u0020-\u007e]*)$/u);
});

test('marks that turn the direction, and nothing else', () => {
  expect(withoutTurns('a\u202eb\u0007\n\u2069')).toBe('a\\u202eb\u0007\n\\u2069');
});
