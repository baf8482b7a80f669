import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createChooser } from './chooser.ts';
import { TARGETS } from './targets.ts';
import { tryCases } from './try-cases.ts';

// Good is a result with finite, balanced figures, or problems in words that say where; see verdict.ts.

test.each(Object.keys(TARGETS).filter((name) => name !== 'legal-extremes'))(
  '300 odd cases of %s are taken well',
  (name) => {
    const { found } = tryCases(TARGETS[name]!, 1, 300);
    expect(found.map(({ number, wrong }) => `${number}: ${wrong.slice(0, 300)}`)).toEqual([]);
  },
);

test('what was found once stays mended', () => {
  for (const file of readdirSync('test/fuzz/found').filter((name) => name.endsWith('.txt'))) {
    const target = TARGETS[file.split('.')[0]!]!;
    expect(target.judge(readFileSync(`test/fuzz/found/${file}`, 'utf8')), file).toBeNull();
  }
});

test('a seed makes the same cases again, another seed others', () => {
  for (const { make } of Object.values(TARGETS)) {
    expect(make(createChooser(7))).toBe(make(createChooser(7)));
    expect(make(createChooser(7))).not.toBe(make(createChooser(8)));
  }
});

test('a crash, a problem without words and a figure that is no number are seen', () => {
  const target = (judge: () => string | null) => ({ make: () => 'x', judge });
  expect(
    tryCases(
      target(() => 'wrong'),
      1,
      2,
    ).found,
  ).toHaveLength(2);
  expect(
    tryCases(
      target(() => null),
      1,
      2,
    ).found,
  ).toHaveLength(0);
});
