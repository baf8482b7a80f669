import { PassThrough } from 'node:stream';
import { describe, expect, test, vi } from 'vitest';
import type { Io } from '../../../src/cli/io.ts';
import { main } from '../../../src/cli/main.ts';
import { startRunCount } from '../../../src/cli/runs/run-count.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { all, byId, readMarkup, tableOf, textOf } from '../../report/page/read-markup.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: ../weather/saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home:
  rooms:
    den: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom }
devices: { drier: { kind: dehumidifier, room: nook, label: 12 L/day } }
plans:
  now: { description: as it is, change: {} }
  cooler: { description: two kelvin less, change: { heating: { setpoint: 17 } } }
  purifier:
    description: clean air
    change: { devices: { cleaner: { kind: purifier, room: den, clean air: 200 } } }
    purchases: [{ what: cleaner, price: 90, lasts: 5 years }]
`;

/** Status, what was said and what was written after a report beside the cottage. */
async function report(args: string[], { files = {}, io = {} }: Over = {}) {
  const world = fakeIo({ 'homes/cottage.yaml': HOME, 'weather/saltmere.csv': JANUARY, ...files });
  const before = new Set(Object.keys(world.files));
  const status = await main(['report', 'homes/cottage.yaml', ...args], { ...world.io, ...io });
  const written = Object.entries(world.files).filter(([path]) => !before.has(path));
  return {
    status,
    ...world.said,
    ...world.done,
    files: world.files,
    written: Object.fromEntries(written),
  };
}

interface Over {
  readonly files?: Record<string, string>;
  readonly io?: Partial<Io>;
}

/** A world in which a run would be noticed. */
function unrun() {
  const startWorkers = vi.fn(() => Promise.reject(new Error('began to run')));
  return { startWorkers };
}

describe('a report', () => {
  test('goes to reports/NAME.html, whose folder is made, and is told on standard error', async () => {
    const { status, out, err, folders, shown, written } = await report(['--doubt', '0']);
    expect({ status, out, shown, folders }).toEqual({
      ...{ status: 0, out: '', shown: [], folders: ['reports'] },
    });
    expect(Object.keys(written)).toEqual(['reports/cottage.html']);
    const page = readMarkup(written['reports/cottage.html']!);
    const [, runs] = /^reports\/cottage\.html written, from (\d+) runs\n$/.exec(err)!;
    expect(textOf(byId(page, 'method'))).toContain(`${runs} runs of 2 days`);
    expect(textOf(all(page, 'footer')[0]!)).toContain('roombalance 1.2.3 on 2030-01-02');
    expect(textOf(all(byId(page, 'method'), 'pre')[0]!)).toBe(HOME);
    expect(textOf(all(page, 'script').at(-1)!)).toBe('/* report/page-script.js */');
    expect(textOf(all(page, 'h1')[0]!)).toBe('Which plan costs and does what?');
  });

  test('is about what was asked, of the plans asked for, as set, drawn apart too, and shown', async () => {
    const args = ['-o', 'here/page.html', '--plans', 'cooler,purifier', '--about', 'purifier'];
    const more = ['--set', '/heating/setpoint=16', '--date', '2026-03-31', '--doubt', '1'];
    const called = await report([...args, ...more, '--charts', 'drawn', '--open']);
    const { status, out, folders, shown, written } = called;
    expect({ status, out, shown, folders }).toEqual({
      ...{ status: 0, out: '', shown: ['here/page.html'], folders: ['drawn'] },
    });
    const text = written['here/page.html']!;
    const page = readMarkup(text);
    expect(textOf(all(page, 'h1')[0]!)).toBe('Is an air purifier worth buying here?');
    expect(textOf(all(page, 'footer')[0]!)).toContain('on 2026-03-31.');
    const [heads, ...lines] = tableOf(page, /^Each plan against cooler/);
    expect(lines[0]![0]).toBe('cooler (nothing done)two kelvin less');
    const asked = lines.find(([name]) => name === 'purifierclean air');
    // With --set the one plan that changes the setpoint is as the other.
    const energy = heads!.findIndex((head) => head.startsWith('energy'));
    const [cooler, purifier] = [lines[0], asked].map((line) => Number(line?.[energy]));
    expect(Math.abs(cooler! - purifier!)).toBeLessThan(0.2 * cooler!);

    const figures = all(page, 'figure').map(({ attributes }) => attributes['id']);
    const svgs = Object.keys(written).filter((path) => path !== 'here/page.html');
    expect(svgs.toSorted()).toEqual(figures.map((id) => `drawn/${id}.svg`).toSorted());
    for (const path of svgs) {
      const svg = written[path]!;
      const [picture, ...rest] = readMarkup(svg.replace(/^<\?xml[^>]*>\s*/, '')).children.filter(
        (child) => typeof child !== 'string',
      );
      expect([picture!.name, rest.length]).toEqual(['svg', 0]);
      expect(picture!.attributes['xmlns']).toBe('http://www.w3.org/2000/svg');
      const id = path.slice('drawn/'.length, -'.svg'.length);
      const title = textOf(byId(page, `${id}-finding`));
      expect(textOf(picture!).replaceAll(/\s/g, '')).toContain(title.replaceAll(/\s/g, ''));
    }
  });
});

describe('a usage error ends with 1 before anything is run', () => {
  test.each([
    [
      ['--date', '2026-02-30'],
      "error: option '--date <YYYY-MM-DD>' argument '2026-02-30' is invalid. Give a day of the calendar, such as 2026-03-31.\n",
    ],
    [
      ['--date', '31.3.2026'],
      "error: option '--date <YYYY-MM-DD>' argument '31.3.2026' is invalid. Give a day of the calendar, such as 2026-03-31.\n",
    ],
    [
      ['--doubt', 'many'],
      "error: option '--doubt <number>' argument 'many' is invalid. Give a whole number of 0 or more.\n",
    ],
    [
      ['-o', 'homes/cottage.yaml'],
      "error: option '-o, --output <file.html>' argument 'homes/cottage.yaml' is invalid. It is read by the same call; name another file.\n",
    ],
    [
      ['-o', 'homes/../weather/saltmere.csv'],
      "error: option '-o, --output <file.html>' argument 'homes/../weather/saltmere.csv' is invalid. It is read by the same call; name another file.\n",
    ],
    [
      ['--plans', 'now,coler'],
      "error: unknown plan 'coler' (did you mean cooler?), known are now, cooler, purifier\n",
    ],
  ])('%j', async (args, words) => {
    const { startWorkers } = unrun();
    const { status, out, err, written } = await report(args, { io: { startWorkers } });
    expect({ status, out, err, written }).toEqual({ status: 1, out: '', err: words, written: {} });
    expect(startWorkers).not.toHaveBeenCalled();
  });

  test('asking about what there is not names what there is', async () => {
    const { status, err, written } = await report(['--about', 'purifer', '-o', 'page.html']);
    expect({ status, written }).toEqual({ status: 1, written: {} });
    expect(err).toBe(
      'error: --about purifer: no plan or proposal beside the baseline has that name; they are ' +
        'cooler, purifier, warmer, aired, fan, warmer-and-aired, warmer-and-fan, aired-and-fan\n(Did you mean purifier?)\n',
    );
  });
});

describe('wrong input ends with 2 before anything is run', () => {
  test('a scenario with faults writes nothing and makes no folder', async () => {
    const { startWorkers } = unrun();
    const files = { 'homes/cottage.yaml': HOME.replace('floor area: 14', 'floor area: -14') };
    const called = await report(['--charts', 'drawn'], { files, io: { startWorkers } });
    expect(called).toMatchObject({ status: 2, out: '', folders: [], written: {} });
    expect(called.err).toMatch(/^homes\/cottage\.yaml:8:\d+: home\.rooms\.den\.floor area: /);
    expect(startWorkers).not.toHaveBeenCalled();
  });

  test('a place where no page can be written', async () => {
    const { startWorkers } = unrun();
    const problem = {
      ...{ file: 'no/page.html', line: 0, column: 0, where: '', hint: '' },
      ...{ expected: 'a file that can be written', got: 'a path whose folder does not exist' },
    };
    const requireWritable = () => Promise.reject(new InputProblems([problem]));
    const io = { startWorkers, requireWritable };
    const { status, err, written } = await report(['-o', 'no/page.html'], { io });
    expect({ status, written }).toEqual({ status: 2, written: {} });
    expect(err).toBe(
      'no/page.html: expected a file that can be written, got a path whose folder does not exist\n',
    );
    expect(startWorkers).not.toHaveBeenCalled();
  });
});

test('help has an example', async () => {
  const { io, said } = fakeIo();
  expect(await main(['report', '--help'], io)).toBe(0);
  expect(said.out).toMatch(/^Usage: roombalance report \[options\] <scenario>\n/);
  expect(said.out).toContain('  $ roombalance report scenarios/terrace.yaml\n');
  expect(said.err).toBe('');
});

test('runs are counted on a terminal, however many there will be', async () => {
  const terminal = Object.assign(new PassThrough(), { isTTY: true, columns: 80 });
  const io = { ...fakeIo().io, terminal: terminal as unknown as NodeJS.WriteStream };
  const counted = async (expected: number): Promise<string> => {
    const count = await startRunCount(io, expected);
    for (let k = 0; k < 3; k++) count.asked();
    count.done();
    count.asked();
    count.done();
    count.stop();
    return String(terminal.read());
  };
  const late = await counted(0);
  expect(late).toContain('2 of 4 runs done');
  // None of none would be a full bar before anything is done.
  expect(late).toContain('0 of 1 runs done');
  expect(late).not.toContain('0 of 0');
  const early = await counted(90);
  expect(early).toContain('0 of 90 runs done');
  // What was expected and never asked for is not waited for at the end.
  expect(early.lastIndexOf('2 of 4 runs done')).toBeGreaterThan(early.lastIndexOf('of 90'));
});
