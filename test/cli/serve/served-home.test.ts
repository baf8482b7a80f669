import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type ServedHome, serveHome } from '../../../src/cli/serve/served-home.ts';
import type { Standing } from '../../../src/report/served/standing.ts';
import { SMALL_HOME, SPRING } from '../../browser/small-home.ts';
import { fakeIo } from '../fake-io.ts';

/** Four days of the small home, which are over in a moment. */
const HOME = SMALL_HOME.replace('to: "04-08"', 'to: "03-14"');

const { io, files, said } = fakeIo({ 'home.yaml': HOME, 'weather.csv': SPRING });
const told: Standing[] = [];
const waiting: (() => void)[] = [];
let home: ServedHome;

/** Waits for a standing of that kind among those told from now on. */
async function until(wanted: (standing: Standing) => boolean): Promise<Standing> {
  for (let from = told.length; ; ) {
    const found = told.slice(from).find(wanted);
    if (found !== undefined) return found;
    from = told.length;
    await new Promise<void>((done) => waiting.push(done));
  }
}

const whole = ({ state, words }: Standing): boolean =>
  state === 'good' && /as it is saved/.test(words);
/** Whole pages are too long to print. */
const has = (page: string, words: string): boolean => page.includes(words);
const text = async (): Promise<string> => (await home.page()).page;

beforeAll(async () => {
  home = await serveHome(io, 'home.yaml', (standing) => {
    told.push(standing);
    for (const go of waiting.splice(0)) go();
  });
  await until(whole);
});
afterAll(() => home.close());

describe('a home that is served', () => {
  test('has a page after the first runs, and a fuller one after all', async () => {
    expect(told.map(({ state, page, words }) => [state, page, words])).toEqual([
      ['running', 0, 'Reading home.yaml …'],
      ['good', 1, 'A first look at 2 plans; the rest and the pictures are on their way …'],
      [...['good', 2], 'This page follows home.yaml as it is saved.'],
    ]);
    const { page, policy } = await home.page();
    expect(policy).toContain("connect-src 'self'; base-uri 'none'; form-action 'none'");
    expect(has(page, 'id="standing" class="standing good"')).toBe(true);
    expect(has(page, '<section id="pictures"')).toBe(true);
    expect(has(page, 'two kelvin less')).toBe(true);
    expect(has(page, 'This page comes from 2 runs; roombalance report home.yaml also')).toBe(true);
  });

  test('shows what is saved', async () => {
    files['home.yaml'] = HOME.replace('two kelvin less', 'a cooler home');
    const { edition, pageOf, page } = await until(whole);
    expect([edition, pageOf, page]).toEqual([2, 2, 4]);
    expect(has(await text(), 'a cooler home')).toBe(true);
    expect(told.some(({ words }) => words.includes('What stands here is older.'))).toBe(true);
  });

  test('where the file is broken, the last page stands, and says what is wrong', async () => {
    files['home.yaml'] = HOME.replace('floor area: 9', 'floor area: -9');
    const { words, problems, page } = await until(({ state }) => state === 'wrong');
    expect(page).toBe(4);
    expect(words).toBe(
      'The files cannot be used as they are now. What stands here is older, of when they last could:',
    );
    expect(problems).toEqual([
      expect.stringMatching(/^home\.yaml:9:25: home\.rooms\.nook\.floor area: expected .*, got -9/),
    ]);
    expect(said.err).toContain('home.yaml:9:25: ');
    const shown = await text();
    expect(has(shown, 'class="standing wrong"')).toBe(true);
    expect(has(shown, 'home.yaml:9:25: ')).toBe(true);
    expect(has(shown, 'a cooler home')).toBe(true);
  });

  test('where a file is gone, and comes again, the page is as it was', async () => {
    const { 'weather.csv': weather } = files;
    files['home.yaml'] = HOME.replace('two kelvin less', 'a cooler home');
    await until(({ state }) => state === 'good');
    delete files['weather.csv'];
    const { problems } = await until(({ state }) => state === 'wrong');
    expect(problems).toEqual([
      'home.yaml:2:10: weather: expected a file to read, got nothing of that name: weather.csv',
    ]);
    files['weather.csv'] = weather!;
    const { page, edition, pageOf } = await until(({ state }) => state === 'good');
    expect([page, edition, pageOf]).toEqual([4, 2, 2]);
  });

  test('what is wrong with a plan has its place too', async () => {
    files['home.yaml'] = HOME.replace('setpoint: 17', 'setpoint: warm');
    const { problems } = await until(({ state }) => state === 'wrong');
    expect(problems[0]).toMatch(
      /^home\.yaml:14:74: heating\.setpoint in plan cooler: expected a temperature/,
    );
  });
});

test('a home that cannot be used from the beginning has a page that says so', async () => {
  const broken = fakeIo({ 'home.yaml': 'title: [' });
  const other = await serveHome(broken.io, 'home.yaml', () => {});
  const { page, policy } = await other.page();
  expect(has(page, '<h1>home.yaml</h1>')).toBe(true);
  expect(has(page, 'home.yaml cannot be used as it is:')).toBe(true);
  expect(has(page, 'Nothing can be shown of this home yet.')).toBe(true);
  expect(policy).toContain("connect-src 'self'");
  await other.close();
});
