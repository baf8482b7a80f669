import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { dewPoint } from '../../../src/physics/moist-air/dew-point.ts';
import {
  relativeHumidity,
  vapourPressureFromRelativeHumidity,
} from '../../../src/physics/moist-air/relative-humidity.ts';
import { surfaceTemperature } from '../../../src/physics/moisture/surface-temperature.ts';
import type { PlanVariant } from '../../../src/studies/plan-variant.ts';
import { equalSafety } from '../../../src/studies/purchase/equal-safety.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { compare } from '../../reference/compare.ts';
import { somePlan } from '../some-plan.ts';

const RAW = {
  home: { rooms: { den: {}, bath: { emitter: 'none' } } },
  heating: { setpoint: 18, rooms: { den: { setpoint: '18 °C', setback: 16 } } },
};

const withHours = (plan: string, hours: number, energy = 1000): PlanMeasures =>
  somePlan(plan, { energy, den: { over: { cold_spot_hours_above_80_pct: hours } } });

/** What the settings ask of the den. [°C] */
const setpointOf = ({ set }: PlanVariant): number =>
  Number(set.find((words) => words.startsWith('/heating/rooms/den/setpoint='))?.split('=')[1]);

/** A home in which each kelvin takes 100 h off and costs 40 a year. */
function linearWorld(hours: number) {
  const asked: PlanVariant[] = [];
  const run = (variant: PlanVariant) => {
    asked.push(variant);
    const more = setpointOf(variant) - 18;
    return withHours('warmer', hours - 100 * more, 1000 + 40 * more);
  };
  return { run, asked };
}

const baseline = {
  variant: { plan: 'as-lived', set: ['/step=15'] },
  measures: withHours('as-lived', 400),
};

describe('how much warmer is as safe', () => {
  test('is found to the resolution, from above, and priced', async () => {
    const { run, asked } = linearWorld(400);
    const device = withHours('dry', 173);
    const found = await equalSafety({ room: 'den', baseline, raw: RAW, device, run });
    expect(found.warmer_by_k).toBeGreaterThanOrEqual(2.27);
    expect(found.warmer_by_k).toBeLessThan(2.27 + 0.1);
    expect(found.hours_warmer).toBeLessThanOrEqual(173);
    expect(found.extra_per_year).toBeCloseTo(40 * found.warmer_by_k!, 9);
    expect(found).toMatchObject({ hours_as_is: 400, hours_with_device: 173, note: '' });
    expect(found.runs).toBe(asked.length);
  });

  test('asks of the same plan, with its settings first, setback and all', async () => {
    const { run, asked } = linearWorld(400);
    await equalSafety({ room: 'den', baseline, raw: RAW, device: withHours('dry', 0), run });
    expect(asked[0]).toEqual({
      plan: 'as-lived',
      set: ['/step=15', '/heating/rooms/den/setpoint=23', '/heating/rooms/den/setback=21'],
    });
  });

  test('goes no higher than the scenario allows, such as by its cooling', async () => {
    const { run, asked } = linearWorld(400);
    const limited = (variant: PlanVariant) => {
      if (setpointOf(variant) > 21) throw new InputProblems([]);
      return run(variant);
    };
    const device = (hours: number) => withHours('dry', hours);
    const common = { room: 'den', baseline, raw: RAW, run: limited };
    expect((await equalSafety({ ...common, device: device(300) })).warmer_by_k).toBeCloseTo(1, 1);
    expect(setpointOf(asked[0]!)).toBe(21);
    const far = await equalSafety({ ...common, device: device(50) });
    expect(far).toMatchObject({ warmer_by_k: null, note: 'not within +3 °C', runs: 1 });
    const never = () => {
      throw new InputProblems([]);
    };
    expect(await equalSafety({ ...common, run: never, device: device(50) })).toMatchObject({
      ...{ warmer_by_k: null, runs: 0, note: 'the scenario allows no warmer setting' },
    });
  });

  test('takes the one kelvin that the scenario allows', async () => {
    const { run } = linearWorld(400);
    const limited = (variant: PlanVariant) => {
      if (setpointOf(variant) >= 20) throw new InputProblems([]);
      return run(variant);
    };
    const device = withHours('dry', 350);
    const found = await equalSafety({ room: 'den', baseline, raw: RAW, device, run: limited });
    expect(found.warmer_by_k).toBeGreaterThanOrEqual(0.5);
    expect(found.warmer_by_k).toBeLessThan(0.6);
  });

  test('says honestly where five kelvin are not enough', async () => {
    const { run } = linearWorld(900);
    const far = { ...baseline, measures: withHours('as-lived', 900) };
    const found = await equalSafety({
      room: 'den',
      baseline: far,
      raw: RAW,
      device: withHours('dry', 10),
      run,
    });
    expect(found).toMatchObject({
      warmer_by_k: null,
      measures: null,
      note: 'not within +5 °C',
      runs: 1,
    });
  });

  test.each([400, 401])(
    'is nothing, without a run, with a device that leaves %d of 400 h',
    async (hours) => {
      const { run } = linearWorld(400);
      const found = await equalSafety({
        room: 'den',
        baseline,
        raw: RAW,
        device: withHours('fan', hours),
        run,
      });
      expect(found).toMatchObject({ warmer_by_k: 0, extra_per_year: 0, runs: 0 });
    },
  );

  test('needs a thermostat and a room', async () => {
    const { run } = linearWorld(400);
    const wet = somePlan('as-lived', { bath: { over: { cold_spot_hours_above_80_pct: 9 } } });
    const setup = { raw: RAW, device: somePlan('dry'), run };
    const found = await equalSafety({
      ...setup,
      room: 'bath',
      baseline: { ...baseline, measures: wet },
    });
    expect(found).toMatchObject({ warmer_by_k: null, note: 'the bath has no thermostat', runs: 0 });
    await expect(equalSafety({ ...setup, room: 'attic', baseline })).rejects.toThrow(
      'equalSafety: as-lived has no room "attic", only den, bath',
    );
  });
});

describe('a room at 18 °C and 65 %, 5 °C outside, cold spot 0.70', () => {
  const pressure = vapourPressureFromRelativeHumidity(18, 65);
  const spot = (room: number, vapour: number) =>
    relativeHumidity(vapour, surfaceTemperature(0.7, room, 5));
  const row = {
    topic: 'Equal safety',
    unit: '%',
    source: 'worked out apart with a Magnus formula, as householders do',
    mark: 'closed form',
    tolerance: { absolute: 0.7 },
    because: 'the last digit printed, and 0.3 % between formulas of saturation',
  } as const;

  test('heated to 20 °C and dried to 55 %', () => {
    const dried = vapourPressureFromRelativeHumidity(18, 55);
    const rows = [
      ['cold spot at 18 °C and 65 %', 83, spot(18, pressure)],
      ['cold spot heated to 20 °C with the same vapour', 76, spot(20, pressure)],
      ['cold spot dried to 55 % at 18 °C', 71, spot(18, dried)],
    ] as const;
    for (const [what, expected, got] of rows) compare({ ...row, what, expected, got });
  });

  test('must be as warm as its dew point asks to be at 80 %', async () => {
    // 100 h of such weather, in which every hour above 80 % counts
    const run = (variant: PlanVariant) =>
      withHours('warmer', spot(setpointOf(variant), pressure) > 80 ? 100 : 0);
    const wet = { ...baseline, measures: withHours('as-lived', 100) };
    const device = withHours('dry', 0);
    const setup = { room: 'den', baseline: wet, raw: RAW, device, run };
    const found = await equalSafety({ ...setup, resolution: 0.001 });
    const surface = dewPoint(pressure / 0.8);
    compare({
      ...row,
      what: 'kelvin warmer for 80 % at the cold spot',
      unit: 'K',
      source: 'vapour kept, surface at the dew point of its pressure over 0.8',
      expected: (surface - (1 - 0.7) * 5) / 0.7 - 18,
      got: found.warmer_by_k!,
      tolerance: { absolute: 0.0011 },
      because: 'the resolution asked for',
    });
  });
});
