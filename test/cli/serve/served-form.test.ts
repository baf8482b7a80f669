import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { serveForm } from '../../../src/cli/serve/served-form.ts';
import type { SiteAnswer } from '../../../src/cli/serve/site.ts';
import { SHOWN } from '../../../src/scenario/start/form-fields.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { fakeIo } from '../fake-io.ts';

const WEATHER = {
  'package/weather/saltmere-typical.csv': readFileSync('weather/saltmere-typical.csv', 'utf8'),
};
const SERVICES = { cache: false };
let world: ReturnType<typeof fakeIo>;

beforeEach(() => {
  world = fakeIo({ ...WEATHER });
});

const form = () => serveForm(world.io, 'home.yaml', SERVICES);
const take = async (entries: Record<string, string>) =>
  (await form()).take(new URLSearchParams(entries).toString());
const pageOf = ({ page }: SiteAnswer): string => (typeof page === 'string' ? page : page.page);
/** What is told beside a field. */
const troubleOf = (answer: SiteAnswer, id: string): string =>
  new RegExp(`id="field-${id}-trouble">([^<]*)<`).exec(pageOf(answer))?.[1] ?? 'no such field';

describe('a form that is sent', () => {
  test('writes what the same answers give at a terminal, byte by byte', async () => {
    const answers = { title: 'Mill & "Race" é', size: '1', heat: 'electric heaters' };
    const body = new URLSearchParams({
      ...answers,
      place: '',
      [SHOWN]: 'devices',
      bothers: 'cost',
    });
    const answer = await (await form()).take(body.toString());
    expect(answer).toEqual({ status: 303, page: '', location: './' });
    const other = fakeIo({
      ...WEATHER,
      'answers.yaml': `${JSON.stringify({ ...answers, devices: [], bothers: ['cost'] })}\n`,
    });
    const { readText } = other.io;
    // What is written is not compared here, so that it ends where the runs would begin.
    other.io.readText = (path, limit) => readText(path === 'home.yaml' ? 'gone' : path, limit);
    const args = ['start', 'home.yaml', '--answers', 'answers.yaml'];
    expect(await main(args, other.io)).toBe(2);
    expect(other.said.err).toContain('gone: expected a file to read');
    expect(world.files['home.yaml']).toBe(other.files['home.yaml']);
    expect(world.files['home.yaml']).toContain('# Nobody answered, so that it is as usual: place,');
    expect(world.files['home-weather.csv']).toBe(other.files['home-weather.csv']);
    expect(world.said.err).toContain('Written: home.yaml, and its weather, home-weather.csv.\n');
  });

  test('is told by the field what will not do, and writes nothing', async () => {
    const answer = await take({ place: '99,3', heat: 'nothing', setpoint: '20', title: '<b>' });
    expect(answer.status).toBe(422);
    expect(troubleOf(answer, 'place')).toMatch(/^Expected latitude and longitude in degrees/);
    expect(troubleOf(answer, 'setpoint')).toBe('No answer is expected: nothing heats the home.');
    expect(troubleOf(answer, 'title')).toBe('');
    expect(pageOf(answer)).toContain('value="&lt;b&gt;"');
    expect(pageOf(answer)).toContain('href="#field-place-input"');
    expect(Object.keys(world.files)).toEqual(Object.keys(WEATHER));
  });

  test('does not write over a file that came meanwhile', async () => {
    const { take: send } = await form();
    world.files['home.yaml'] = 'mine';
    const answer = await send('');
    expect(answer.status).toBe(422);
    expect(pageOf(answer)).toContain(
      'home.yaml: expected the name of a file that is not there yet, got one that is',
    );
    expect(world.files['home.yaml']).toBe('mine');
  });

  test('says by the field which file of prices is missing', async () => {
    const answer = await take({ tariff: 'file', electricity: 'mine.csv' });
    expect(troubleOf(answer, 'electricity')).toBe(
      'mine.csv: expected a file to read, got nothing of that name',
    );
  });

  test('says by the field that the network cannot be had, and what is nearest', async () => {
    const place = { file: 're.example', line: 0, column: 0, where: '', hint: '' };
    world.io.get = () =>
      Promise.reject(new InputProblems([{ ...place, expected: 'weather', got: 'no connection' }]));
    const answer = await take({ weather: 'fetch' });
    expect(troubleOf(answer, 'weather')).toMatch(
      /no connection\. Of those at hand Saltmere, invented typical year is nearest in climate, /,
    );
    expect(world.files['home.yaml']).toBeUndefined();
  });
});

describe('a form that is opened', () => {
  test('goes on from answers that were kept', async () => {
    world.files['home.answers.yaml'] = 'title: Mill\nkind: detached\n';
    const page = pageOf((await form()).empty());
    expect(page).toContain('value="Mill"');
    expect(page).toContain('<option value="detached" selected>');
    expect(world.said.err).toContain('Going on: 2 answers are in home.answers.yaml');
  });

  test('is refused where a scenario or weather of that name is', async () => {
    world.files['home-weather.csv'] = 'mine';
    await expect(form()).rejects.toThrow(
      'home-weather.csv: expected the name of a file that is not there yet, got one that is',
    );
  });

  test('sends itself to its own address, and may do nothing else', async () => {
    const { page } = (await form()).empty();
    const policy = typeof page === 'string' ? '' : page.policy;
    expect(policy).toMatch(/^default-src 'none'; style-src 'sha256-/);
    expect(policy).toMatch(/; base-uri 'none'; form-action 'self'$/);
    expect(policy).not.toContain('connect-src');
    expect(policy).not.toContain('unsafe');
  });
});
