import { describe, expect, test } from 'vitest';
import type { Device, Stove } from '../../../src/home/devices.ts';
import type { Home } from '../../../src/home/home.ts';
import { leaky } from '../../home/leaky.ts';
import { BOILER, home, type Moment, measure, room, START, setup } from '../hand-made.ts';

const CO2 = { name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 } as const;
const sentences = (found: ReturnType<typeof measure>, id: string): string[] =>
  found.notices.filter((notice) => notice.id === id).map(({ text }) => text);

describe('outdoor air for each person asleep', () => {
  /** A trace of a cold day in a den. */
  const night = (at: (step: number) => Moment, more: Partial<Home> = {}) =>
    measure(setup({ home: home(more) }), (s) => ({ outdoor: 5, ...at(s) }));
  const each = (found: ReturnType<typeof measure>) =>
    found.rooms['den']!.outdoor_air_l_per_s_per_person_asleep;

  test('is the air of the hours with sleepers, over how many they are', () => {
    // Two asleep in the first eight hours with 6 L/s, nobody later with 50.
    const found = night((s) =>
      s < 48 ? { asleep: 2, outdoorAir: 0.006 } : { occupants: 1, outdoorAir: 0.05 },
    );
    expect(each(found)).toBeCloseTo(3, 9);
  });

  test('part of a step counts for that part, with all the air of it', () => {
    // One person asleep for half of each step breathes what comes in meanwhile: 6 L/s.
    expect(each(night(() => ({ asleep: 0.5, outdoorAir: 0.006 })))).toBeCloseTo(6, 9);
    // One all the time and one for a third of it: 6 L/s over 4/3.
    expect(each(night(() => ({ asleep: 4 / 3, outdoorAir: 0.006 })))).toBeCloseTo(4.5, 9);
  });

  test('is not known where nobody sleeps, even where subtracting leaves a little', () => {
    expect(each(night(() => ({ occupants: 1, outdoorAir: 0.006 })))).toBeNull();
    const found = night(() => ({ asleep: 0.3 - 0.1 - 0.2 + 1e-12, outdoorAir: 0.006 }));
    expect(each(found)).toBeNull();
    expect(sentences(found, 'fresh-air-asleep')).toEqual([]);
  });

  test('is judged by what handbooks ask for, as it is printed, with the CO2 beside it', () => {
    const said = (flow: number, species: Home['species'] = []) =>
      sentences(
        night(() => ({ asleep: 1, outdoorAir: flow, species: species.map(() => 900) }), {
          species,
          rooms: [room('den', { deposition: species.map(() => 0) })],
        }),
        'fresh-air-asleep',
      )[0];
    expect(said(0.0031)).toBe(
      'For those asleep, den gets 3.1 L/s a person straight from outdoors in the heating season, ' +
        'less than even the 4 L/s that handbooks call the least (EN 16798-1 has 7 for category II ' +
        'and 4 for III). What comes through doors from other rooms is extra, and fresh only in part.',
    );
    expect(said(0.00396)).toContain('4.0 L/s a person');
    expect(said(0.00396)).toContain('less than the 7 L/s that handbooks ask for');
    expect(said(0.007)).toContain('no less than the 7 L/s that handbooks ask for');
    expect(said(0.007, [CO2])).toMatch(
      / Over the whole period CO2 there was above its band for \d+ h with somebody in\.$/,
    );
  });

  test('of several rooms the one that gets least is named', () => {
    const own = home({ rooms: [room('den'), room('nook')] });
    const found = measure(setup({ home: own }), (_, i) => ({
      ...{ asleep: 1, outdoorAir: i === 0 ? 0.008 : 0.005 },
    }));
    expect(sentences(found, 'fresh-air-asleep')[0]).toMatch(
      /^For those asleep, nook gets least: 5\.0 L\/s a person straight from outdoors over the period, /,
    );
  });
});

describe('what an extract fan changes', () => {
  const fan: Device = {
    name: 'fan',
    room: 0,
    does: { kind: 'extract fan', flow: 0.015, power: 5 },
  };
  const said = (at: (step: number) => Moment & { share: number }) =>
    sentences(
      measure(setup({ home: home({ devices: [fan] }) }), (s) => {
        const { share, ...moment } = at(s);
        return { ...moment, devices: [{ share }] };
      }),
      'fresh-air-fan',
    );

  test('is the air of steps with it beside that of the steps next to them', () => {
    // On from 01:00 to 03:00 and from 12:00 on; 30 and 40 L/s at night, 20 and 32 by day, much later.
    const at = (s: number) => {
      const share = (s >= 6 && s < 18) || (s >= 72 && s < 80) ? 1 : 0;
      const [still, running] = s < 40 ? [0.03, 0.04] : s < 100 ? [0.02, 0.032] : [0.5, 0.5];
      return { share, outdoorAir: share === 1 ? running : still };
    };
    // Two changes of 30 to 40 and two of 20 to 32: 25 and 36.
    expect(said(at)).toEqual([
      'The fan "fan" blew out 15.0 L/s for 3 h over the period. As it started or stopped, the ' +
        'outdoor air that comes into the home was 25.0 L/s without it and 36.0 L/s with it. The ' +
        'other 4.0 L/s would have left the home without it, by cracks and windows.',
    ]);
  });

  test('is known where it starts in the middle of a step, not where it does so slowly', () => {
    const rising = (parts: readonly number[]) => (s: number) => ({
      share: s < 10 ? 0 : (parts[s - 10] ?? 1),
      outdoorAir: s < 10 ? 0.03 : 0.045,
    });
    expect(said(rising([0.5]))[0]).toContain('30.0 L/s without it and 45.0 L/s with it.');
    expect(said(rising([0.5]))[0]).not.toContain('The other');
    expect(said(rising([0.3, 0.6]))[0]).toBe(
      'The fan "fan" blew out 15.0 L/s for 22 h over the period. It never started or stopped with ' +
        'the windows as they were, so that only a plan without it tells what it changes.',
    );
  });

  test('is told of each fan by its own hours', () => {
    const fans = [fan, { ...fan, name: 'hood', does: { ...fan.does, flow: 0.05 } }];
    const found = measure(setup({ home: home({ devices: fans }) }), (s) => ({
      outdoorAir: s < 10 ? 0.06 : 0.03,
      devices: [{ share: 1 }, { share: s < 10 ? 1 : 0 }],
    }));
    expect(sentences(found, 'fresh-air-fan')).toEqual([
      expect.stringMatching(
        /^The fan "fan" blew out 15\.0 L\/s for 24 h .* never started or stopped/,
      ),
      'The fan "hood" blew out 50.0 L/s for 2 h over the period. As it started or stopped, the ' +
        'outdoor air that comes into the home was 30.0 L/s without it and 60.0 L/s with it. The ' +
        'other 20.0 L/s would have left the home without it, by cracks and windows.',
    ]);
  });

  test('leaves out times at which windows were opened or shut too', () => {
    const at = (s: number) => ({ share: s < 10 ? 0 : 1, windowOpen: s < 10 ? 0 : 1 });
    expect(said(at)[0]).toContain('never started or stopped with the windows as they were');
  });

  test('is not spoken of where it never runs', () => {
    expect(said(() => ({ share: 0 }))).toEqual([]);
  });
});

describe('a stove in a room below the pressure outdoors', () => {
  const burning = (
    pressure: (step: number) => number,
    { roomAir = 0.008, how = leaky([1], 0.02) as Home['leakage']['how'] } = {},
  ) => {
    const leakage = { how, share: [1], ach50: null };
    const own = home({ devices: [stove(roomAir)], leakage, sources: [BOILER] });
    return measure(setup({ home: own }), (s) => ({
      ...{ pressure: pressure(s), devices: [{ share: s < 72 ? 1 : 0 }] },
    }));
  };
  const hours = (found: ReturnType<typeof measure>) =>
    found.devices.detail['stove']!.hours_4_pa_below_outdoors;

  test('counts the hours in which it burns more than 4 Pa below outdoors', () => {
    // Half a day burning; 3 h of it at 4.1 Pa below, 3 h at 3.9, and 12 h low without a fire.
    const found = burning((s) => (s < 18 ? -4.1 : s < 36 ? -3.9 : s < 72 ? 2 : -9));
    expect(hours(found)).toBeCloseTo(3, 9);
    expect(hours(burning(() => -4))).toBe(0);
  });

  test('is a reason to call a fitter and never a clearance', () => {
    const [caution] = burning(() => -4.1).cautions;
    expect(caution).toEqual({
      id: 'stove-depressurised',
      text:
        'While the stove burned, the pressure in the den was more than 4 Pa below that outdoors for part of the time, which ' +
        'can draw fumes into the room. That is a reason to call a competent fitter, who tests it ' +
        'with doors and windows shut and all fans on. A carbon monoxide alarm belongs in that room, ' +
        'and local codes may forbid such a fan. The hours are an estimate; fewer or none of them, ' +
        'here or in another plan, are never a clearance.',
    });
  });

  test('without such hours nothing is said, least of all that it is safe', () => {
    const found = burning(() => -3.9);
    expect(found.cautions).toEqual([]);
    expect(JSON.stringify([found.cautions, found.notices])).not.toMatch(/safe|harmless|no danger/i);
  });

  test('has no hours where its air comes from outdoors or pressures are not known', () => {
    expect(hours(burning(() => -9, { roomAir: 0 }))).toBeNull();
    expect(hours(burning(() => -9, { how: { by: 'rate', flow: 0.01 } }))).toBeNull();
    expect(hours(burning(() => -9, { how: { by: 'pressure', cracks: [] } }))).toBeNull();
  });
});

function stove(roomAir: number): Device {
  const does: Stove = {
    ...{ kind: 'stove', batch: 1, interval: 3600, energy: 15e6, efficiency: 0.7 },
    ...{ radiantShare: 0.5, lag: 0, perRefuelling: [], roomAir },
  };
  return { name: 'stove', room: 0, does };
}

test('warm months do not count for those asleep, whether anything is heated or not', () => {
  const own = setup({ period: { start: START - 2 * 86_400, hours: 96 }, home: home() });
  const slept = (heating: number) =>
    measure(
      own,
      (s) => ({
        asleep: 1,
        outdoorAir: s < 2 * 144 ? 0.01 : 0.003,
        outdoor: s < 2 * 144 ? 12.9 : 13.1,
      }),
      { entries: { energy: { heating } } },
    ).rooms['den']!.outdoor_air_l_per_s_per_person_asleep;
  expect(slept(0)).toBeCloseTo(10, 9);
  expect(slept(1)).toBe(slept(0));
});
