import { expect, test } from 'vitest';
import { homeWith, readingProblems } from '../problems-of.ts';

test('tabs', () => {
  expect(readingProblems('title: a\nhome:\n\trooms: {}')[0]).toBe(
    'h.yaml:3:1: expected spaces before the first word of a line, got a tab (YAML forbids tabs there)',
  );
});

test('a bracket that nothing closes is told where it opens, once', () => {
  expect(
    readingProblems('title: a\nhome: [\n  build: { age: 1 }\n  rooms:\n    den: {}\nsite: {}\n'),
  ).toEqual([
    'h.yaml:2:7: expected a "]" that closes this "[", got none (the lines behind it are read as part of it)',
  ]);
  // of two around each other the inner one, and what is wrong before it
  expect(readingProblems('title: a\nhome: { rooms: [den }\nsite: {}')).toEqual([
    'h.yaml:2:16: expected a "]" that closes this "[", got none (the lines behind it are read as part of it)',
  ]);
  // in the place of a key as well
  expect(readingProblems('title: a\nhome: { [den: 14 }\nsite: {}')).toEqual([
    'h.yaml:2:9: expected a "]" that closes this "[", got none (the lines behind it are read as part of it)',
  ]);
  expect(readingProblems('title: a\n\tstep: 5\nhome: {\n')).toEqual([
    expect.stringContaining('h.yaml:2:1: expected spaces'),
    'h.yaml:3:7: expected a "}" that closes this "{", got none',
  ]);
});

test('a key that stands there twice', () => {
  expect(readingProblems(homeWith('step: 10\nstep: 5'))).toEqual([
    'h.yaml:9:1: expected every key once, got "step", which stands in line 8 already (remove one of the two)',
  ]);
});

test('a key that stands there three times, and one in another mapping', () => {
  expect(
    readingProblems(homeWith('step: 10\nstep: 5\nperiod: { to: a, to: b }\nstep: 10')),
  ).toEqual([
    'h.yaml:9:1: expected every key once, got "step", which stands in line 8 already, and 1 time more further down (keep one of them)',
    'h.yaml:10:18: expected every key once, got "to", which stands in line 10 already (remove one of the two)',
  ]);
});

test('an alias bomb', () => {
  const levels = Array.from({ length: 9 }, (_, k) => {
    const before = k === 0 ? '"x"' : `*a${k - 1}`;
    return `a${k}: &a${k} [${Array.from({ length: 9 }, () => before).join(', ')}]`;
  });
  const [problem, ...more] = readingProblems(levels.join('\n'));
  expect(more).toEqual([]);
  expect(problem).toBe(
    'h.yaml: expected aliases (*) that unfold to no more than 100 copies, got aliases of aliases that unfold to many more',
  );
});

test('an alias to nothing, and one that holds itself', () => {
  expect(readingProblems('title: *nobody\nweather: &w w.csv\nsite: *w')).toEqual([
    'h.yaml:1:8: expected an anchor &nobody further up, got the alias *nobody alone',
  ]);
  expect(readingProblems('plans: &p { a: { change: *p } }')).toEqual([
    'h.yaml: expected aliases (*) that end, got one that holds itself',
  ]);
});

test('fifty megabytes', () => {
  expect(readingProblems('x'.repeat(50e6))).toEqual([
    'h.yaml: expected at most 0.5 MB of text, got 50.0 MB (weather stands in its own file)',
  ]);
});

test('a binary file', () => {
  expect(readingProblems('PNG\u0000\u0001\n\ufffd')).toEqual([
    'h.yaml: expected a text file in UTF-8, got a byte that is not text in line 1 (is it a picture, a spreadsheet or an archive?)',
  ]);
});

test.each([
  ['brackets', '['.repeat(100_000)],
  ['closed brackets', `a: ${'['.repeat(5000)}${']'.repeat(5000)}`],
  ['dashes', '- '.repeat(100_000)],
  ['indents', Array.from({ length: 800 }, (_, k) => `${' '.repeat(k)}k:`).join('\n')],
])('endless nesting by %s', (_, text) => {
  expect(readingProblems(text)).toEqual([
    expect.stringMatching(
      /^h\.yaml: expected no more than 100 levels of nesting, got more in line/,
    ),
  ]);
});

test('forty thousand unknown keys are not all listed', () => {
  const keys = Array.from({ length: 40_000 }, (_, k) => `k${k}: 1`).join('\n');
  const problems = readingProblems(keys);
  expect(problems.length).toBeLessThan(210);
  expect(problems.join('\n')).toContain('expected no more than 200 problems, got 40003');
});

test('two documents', () => {
  expect(readingProblems(`${homeWith('')}---\ntitle: b`)[0]).toContain('expected one document');
});

test('an open quote is placed', () => {
  expect(readingProblems('title: "a\nweather: b')[0]).toMatch(/^h\.yaml:\d+:\d+: expected YAML/);
});

test('YAML 1.2: yes is text and 010 is ten', () => {
  expect(readingProblems(homeWith('step: yes'))[0]).toContain('got "yes"');
  expect(readingProblems(homeWith('step: 010'))).toEqual([]);
});

test('a number where text is asked says that it wants quotes', () => {
  expect(readingProblems(homeWith('plans: { now: { description: 19, change: {} } }'))).toEqual([
    expect.stringContaining(
      'plans.now.description: expected text that is not empty, in quotes where it is a number, got 19',
    ),
  ]);
});

test('a mapping with a length of its own is no text', () => {
  const text = homeWith('').replace('weather: w.csv', 'weather: { length: [{ toString: true }] }');
  expect(readingProblems(text)).toEqual([
    expect.stringContaining('weather: expected text that is not empty, got a mapping'),
  ]);
});

test.each([
  [
    'money: { electricity: 0,30 }',
    'h.yaml:8:25: expected a number with a decimal point, got 0, 30 (write 0.30 with a point)',
  ],
  [
    'money: { electricity: 0,30, gas: 0.07 }',
    'h.yaml:8:25: expected a number with a decimal point, got 0, 30 (write 0.30 with a point)',
  ],
  [
    'cooling: { power: 2,5 kW }',
    'h.yaml:8:21: expected a number with a decimal point, got 2, 5 kW (write 2.5 kW with a point)',
  ],
])('a decimal comma in braces: %s', (more, problem) => {
  expect(readingProblems(homeWith(more))).toEqual([problem]);
});

test('a decimal comma on a line of its own', () => {
  expect(readingProblems(homeWith('money:\n  electricity: 0,30'))).toEqual([
    'h.yaml:9:16: money.electricity: expected a price a kWh, or a mapping with price, or day, night and night hours, or prices, got "0,30" (write 0.30 with a point)',
  ]);
});

test('beside decimal commas all else that is wrong is told, in the order of lines', () => {
  const more =
    'money: { electricity: 0,30, gas: 0,07 }\nheating: { source: furnace, setpoint: 2,1 kW }';
  expect(readingProblems(homeWith(more))).toEqual([
    expect.stringMatching(/^h.yaml:8:25: .*write 0\.30 with a point/),
    expect.stringMatching(/^h.yaml:8:36: .*write 0\.07 with a point/),
    expect.stringMatching(/^h.yaml:9:20: heating\.source: .*"furnace"/),
    // What the comma stood in is checked as it was meant.
    expect.stringMatching(/^h.yaml:9:39: heating\.setpoint: .*got "2\.1 kW"/),
    expect.stringMatching(/^h.yaml:9:41: .*write 2\.1 kW with a point/),
  ]);
});
