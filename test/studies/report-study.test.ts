import { describe, expect, test } from 'vitest';
import type { PlanVariant } from '../../src/studies/plan-variant.ts';
import { reportStudy, type WatchedRun } from '../../src/studies/report-study.ts';
import { AIRED, DRY, linearScenario, linearWorld, type Today } from './linear-world.ts';

const BASE = 'as-lived: { change: {} }';
const NINETEEN = 'nineteen: { change: { heating: { setpoint: 19 } } }';
const TWENTY = 'twenty: { change: { heating: { setpoint: 20 } } }';
const VENTED = 'vented: { change: { devices: { fan: { kind: extract fan, room: bath } } } }';

interface Asked extends Today {
  about?: string | null;
  samples?: number;
}

async function study({ about = null, samples = 0, ...today }: Asked = {}) {
  const world = linearWorld(linearScenario(today));
  const { scenario, files } = world;
  const done = { runs: 0, watched: [] as PlanVariant[] };
  const run = async (variant: PlanVariant) => {
    const measures = await world.run(variant);
    done.runs++;
    return measures;
  };
  const watch = async (variant: PlanVariant) => {
    done.watched.push(variant);
    const measures = await world.run(variant);
    return { measures, series: {}, ledger: {} } as unknown as WatchedRun;
  };
  const found = await reportStudy({
    ...{ scenario, files, run, watch, about, set: [] },
    draw: { samples, seed: 1, years: 1 },
    runIn: run,
    inputWords: (pointer) => ({ name: pointer, unit: '' }),
    plans: scenario.plans.map(({ name }) => name),
    refuseAbout: (known) => {
      throw new Error(`none of ${known.join(', ')}`);
    },
  });
  return { found, done };
}
const pictured = ({ found }: Awaited<ReturnType<typeof study>>) =>
  found.pictured.map(({ option }) => option.name);

const usual = await study({ samples: 8 });

describe('what a report tells', () => {
  test('options: plans, proposals, the warmer room last', () => {
    const { options } = usual.found;
    expect(options.map(({ origin }) => origin)).toEqual([
      ...['baseline', 'plan'],
      ...Array(6).fill('proposed'),
      'as safe',
    ]);
    expect(options.at(-1)).toBe(usual.found.purchase!.warmer);
  });

  test('the purchase, and the room it stands in', () => {
    expect(usual.found.purchase!.about.option.name).toBe('dry');
    expect(usual.found.purchase!.decision.verdict).toBe('worth it');
    expect(usual.found.room).toBe('den');
  });

  test('what the scenario’s own plans do, in words', () => {
    const { answer } = usual.found;
    const told = JSON.stringify(answer);
    expect(told).toContain('dry');
    expect(told).not.toContain('warmer-and-fan');
  });

  test('how many runs were made: each once, and those of pictures besides', () => {
    const { found, done } = usual;
    expect(done.watched).toHaveLength(found.pictured.length);
    expect(found.runs).toBe(done.runs + found.pictured.length);
  });

  test('a run that is refused is not counted', async () => {
    // 4 °C, below the frost guard, is asked for and refused
    const { found, done } = await study({ setpoint: 8 });
    expect(found.purchase!.flips.find(({ unit }) => unit === '°C')!.low).toBe(6);
    expect(found.runs).toBe(done.runs + found.pictured.length);
  });
});

describe('what is pictured', () => {
  test('the baseline, the purchase, the warmer room, then plans before proposals', async () => {
    expect(pictured(usual).slice(0, 4)).toEqual(['as-lived', 'dry', 'den 3.0 °C warmer', 'warmer']);
    expect(pictured(usual)).toHaveLength(6);
    const plans = [BASE, NINETEEN, TWENTY, DRY];
    const more = await study({ plans });
    expect(pictured(more).slice(0, 5)).toEqual([
      ...['as-lived', 'dry', 'den 3.0 °C warmer', 'nineteen', 'twenty'],
    ]);
    expect(more.done.watched).toEqual(more.found.pictured.map(({ option }) => option.variant));
  });

  test('what comes first instead, before plans in their order', async () => {
    // so wet that five kelvin are not enough, and electricity so dear that airing is cheaper
    const plans = [BASE, NINETEEN, TWENTY, AIRED, DRY];
    const found = await study({ plans, water: 3, electricity: 0.5 });
    expect(found.found.purchase!.decision.instead).toBe('aired');
    expect(pictured(found).slice(0, 5)).toEqual([
      ...['as-lived', 'dry', 'aired', 'nineteen', 'twenty'],
    ]);
  });

  test('nothing twice, though the warmer room is what comes first instead', async () => {
    const found = await study({ electricity: 0.5 });
    expect(found.found.purchase!.decision.instead).toBe('den 3.0 °C warmer');
    expect(pictured(found).slice(0, 4)).toEqual(['as-lived', 'dry', 'den 3.0 °C warmer', 'warmer']);
    expect(new Set(pictured(found)).size).toBe(pictured(found).length);
  });
});

describe('what is asked about', () => {
  test('the one that is named', async () => {
    const { found } = await study({ plans: [BASE, VENTED, DRY], about: 'vented' });
    expect(found.purchase).toMatchObject({
      about: { device: 'fan', question: 'Is an extract fan worth having here?' },
    });
    expect(found.room).toBe('bath');
  });

  test.each([
    ['nineteen', NINETEEN, '18 °C or 19 °C?'],
    ['aired', AIRED, 'Open windows otherwise?'],
    ['shaded', 'shaded: { change: { home: { build: { age: 1990 } } } }', 'Change the building?'],
  ])('a plan that brings nothing: %s', async (about, plan, question) => {
    const { found } = await study({ plans: [BASE, plan, DRY], about });
    expect(found.purchase).toMatchObject({ about: { device: null, question }, sum: null });
    expect(found.purchase!.decision.sentences[0]).toMatch(/[.]$/);
  });

  test('a name that no plan or proposal has is refused, with those that there are', async () => {
    await expect(study({ plans: [BASE, NINETEEN, DRY], about: 'ninteen' })).rejects.toThrow(
      /^none of nineteen, dry, /,
    );
    await expect(study({ plans: [BASE, DRY], about: 'as-lived' })).rejects.toThrow(
      /^none of dry, /,
    );
  });

  test('nothing where nothing dries: pictures of the dampest room, doubts left aside', async () => {
    const had = DRY.replace('dry:', 'as-lived:');
    const { found } = await study({ plans: [had, NINETEEN], samples: 3 });
    expect(found.purchase).toBeNull();
    expect(found.pictured.map(({ option }) => option.name).slice(0, 4)).toEqual([
      ...['as-lived', 'nineteen', 'warmer', 'aired'],
    ]);
    expect(found.room).toBe('den');
    expect(found.untried.length).toBeGreaterThan(10);
    expect(found.untried.every(({ only }) => only === undefined)).toBe(true);
  });
});

describe('doubts', () => {
  const more = `doubts:
  /heating/setpoint: [17, 19]
  /devices/drier/target: [50, 60]
  /money/gas/price: [0.05, 0.09]
  /household/activities/0/water: [1.5, 2.5]
  /home/leakage/area: [0.01, 0.02]`;
  const leaky = 'leaky: { change: { home: { leakage: { area: 0.015 } } } }';

  test('all are drawn at once, and those that the figures follow most are tried alone', () => {
    const { purchase, untried } = usual.found;
    const { draws, doubt } = purchase!;
    expect(draws!.pairs).toHaveLength(8);
    expect(draws!.doubt.inputs.length).toBeGreaterThan(10);
    const tried = [...doubt.effects, ...doubt.impossible].map(({ path }) => path);
    expect(tried.toSorted()).toEqual(
      draws!.ranked
        .slice(0, 6)
        .map(({ path }) => path)
        .toSorted(),
    );
    // Giving the U-value of the floor does away with its layers.
    expect(untried.map(({ path }) => path)).toEqual(draws!.doubt.left_aside);
    expect(untried.map(({ path }) => path)).toContain('/home/build/floor u-value');
  });

  test('in words of the scenario, each where it is in doubt', async () => {
    const warm = DRY.replace('change: {', 'change: { heating: { setpoint: 20 },');
    const { found } = await study({ plans: [BASE, warm, leaky], more, samples: 40 });
    const { effects, impossible } = found.purchase!.doubt;
    expect(impossible).toEqual([]);
    expect(effects).toHaveLength(6);
    // What the scenario doubts is among those tried alone, though most of it moves nothing here.
    const stated = effects.filter(({ source }) => source === 'stated in the scenario');
    expect(stated.map(({ path, only }) => [path, only]).sort()).toEqual([
      ['/devices/drier/target', 'plan'],
      ['/heating/setpoint', 'baseline'],
      ['/household/activities/0/water', undefined],
      ['/money/gas/price', undefined],
    ]);
    // The plan keeps its 20 °C: a kelvin of the baseline is all that moves, at 60 a year.
    const setpoint = effects.find(({ path }) => path === '/heating/setpoint')!;
    expect(setpoint.at_low - setpoint.at_high).toBeCloseTo(120, 9);
    expect(found.untried.map(({ path }) => path)).not.toContain('/money/gas/price');
    expect(found.unusableDoubts).toEqual(['/home/leakage/area']);
  });

  test('beyond the range in one plan and nowhere in the other is of no use', async () => {
    const damp = DRY.replace('dry:', 'damp:').replace('label: 12', 'label: 12, target: 70 %');
    const { found } = await study({ plans: [BASE, DRY, damp, leaky], more, about: 'damp' });
    expect(found.unusableDoubts).toEqual(['/devices/drier/target', '/home/leakage/area']);
    // and none is tried where none is asked for
    expect(found.purchase!.doubt.effects).toEqual([]);
    expect(found.untried[0]!.path).toBe('/heating/setpoint');
  });
});
