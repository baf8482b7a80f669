import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { all, byId, readMarkup, textOf } from '../../report/page/read-markup.ts';
import { called, requireBuild } from '../built-program.ts';
import { builtIo, calledHere, calledWithThreads } from '../call-built.ts';
import { JANUARY } from '../january.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const root = temporaryFolder();
const HOME = `title: Test cottage
weather: w.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home:
  rooms:
    den: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom, panes: [{ area: 1, faces: south }] }
devices: { drier: { kind: dehumidifier, room: nook, label: 12 L/day }, fan: { kind: extract fan, room: den } }
doubts: { /home/rooms/nook/panes/0/area: [0.5, 9], /home/leakage/ach50: [5, 12] }
plans:
  now: { description: as it is, change: {} }
  pure: # with a partition: too small a wall for the larger pane
    description: clean air in half the nook
    change:
      home: { rooms: { nook: { floor area: 4 } } }
      devices: { cleaner: { kind: purifier, room: nook, clean air: 200 } }
`;

beforeAll(async () => {
  requireBuild();
  writeFileSync(join(root, 'cottage.yaml'), HOME);
  writeFileSync(join(root, 'w.csv'), JANUARY);
});

const REPORT = [
  ...['report', 'cottage.yaml', '--about', 'pure', '--doubt', '2', '--date', '2026-03-31'],
];

test('threads give the very bytes of running all in one, and say what cannot be run', async () => {
  const { page, ...said } = await reported(calledWithThreads);
  expect(said).toMatchObject({ status: 0, out: '' });
  expect(said.err).toMatch(/^reports\/cottage\.html written, from \d+ runs\n$/);
  const alone = await reported(calledHere);
  expect(alone.page === page, 'bytes of threads and of one').toBe(true);

  const read = readMarkup(page);
  expect(textOf(byId(read, 'doubts'))).toContain('1 whose low or high is no home any more');
  expect(textOf(byId(read, 'doubts'))).toContain(
    'rooms, nook, panes, number 1, area (/home/rooms/nook/panes/0/area): 0.5 to 9',
  );
  const script = textOf(all(read, 'script').at(-1)!);
  expect(script).toBe(readFileSync('dist/report/page-script.js', 'utf8'));
  expect(script).not.toMatch(/<\/script|<!--/i);
});

test('what goes wrong in a thread ends the program in words', async () => {
  const oven = `nook: { floor area: 1, height: 2, elements: [], emitter: none, panes: [{ area: 50,
      faces: south, u-value: 0.2, g-value: 1, shading: 0, frame: 0 }] }`;
  const folder = join(root, 'oven');
  mkdirSync(folder);
  const home = HOME.replace(/nook: .*/, oven).replace(/^doubts[\s\S]*/m, '');
  writeFileSync(
    join(folder, 'oven.yaml'),
    home.replace('"01-05", to: "01-06"', '"05-01", to: "09-30"'),
  );
  writeFileSync(join(folder, 'w.csv'), readFileSync('weather/saltmere-typical.csv'));
  const { status, out, err } = await called(['report', 'oven.yaml', '-o', 'page.html'], folder);
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(err).toMatch(
    /^oven\.yaml: expected a home that stays within the range of every formula, got .*\n$/,
  );
  expect(existsSync(join(folder, 'page.html'))).toBe(false);
});

/** The page, and what is said of it, of a call in this process from the folder. */
async function reported(call: typeof calledHere) {
  let page = '';
  const { readText } = await builtIo();
  const said = await call(REPORT, {
    readText: (path, limit) => readText(join(root, path), limit),
    writeWhole: async (_: string, text: string) => {
      page += text;
    },
    makeFolder: async () => {},
    requireWritable: async () => {},
  });
  return { page, ...said };
}
