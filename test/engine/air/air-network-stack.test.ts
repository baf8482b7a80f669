import { expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import { densityAt, flowOf, hole, leftIn, solved, touching } from './a-network.ts';

const TOPIC = 'Air by pressures';

test('warm air rises through two holes five metres apart', () => {
  const rows = [
    [0.01, 0.01, 2.41171, 0.013931, 38.8093],
    [0.02, 0.01, 0.944665, 0.0174377, 48.5783],
    [0.01, 0.02, 3.94227, 0.0178112, 49.6188],
  ] as const;
  for (const [below, above, level, kilograms, cubicMetres] of rows) {
    const net = solved(
      [
        { to: 0, law: hole(below) },
        { to: 0, height: 5, law: hole(above) },
      ],
      [20],
      0,
    );
    const home = `holes of ${below} and ${above} m2, 5 m apart, 20 and 0 °C`;
    const shared = {
      topic: TOPIC,
      source: 'two orifices in a warm room, neutral level by their balance',
      mark: 'closed form',
      because:
        'worked out with 9.81 m/s2; holes here are straight lines below a millionth of a pascal',
    } as const;
    const neutral = -net.pressure[0]! / net.buoyancy[0]!;
    const tolerance = { relative: 6e-4 };
    compare({
      ...shared,
      what: `${home}: neutral level`,
      unit: 'm',
      expected: level,
      got: neutral,
      tolerance,
    });
    compare({
      ...shared,
      what: `${home}: flow`,
      unit: 'kg/s',
      expected: kilograms,
      got: flowOf(net, 0),
      tolerance,
    });
    compare({
      ...{
        ...shared,
        what: `${home}: outdoor air`,
        unit: 'm3/h',
        expected: cubicMetres,
        tolerance,
      },
      got: (3600 * flowOf(net, 0)) / densityAt(0),
    });
    expect(Math.abs(leftIn(net, 0))).toBeLessThan(1e-12 * flowOf(net, 0));
  }
});

test('cracks breathe by warmth, with the neutral level where their flows meet', () => {
  // Equal mass in and out with one density in the flow: 50 dp^0.65 below and above, 4.32444 Pa in all.
  const [n, head] = [0.65, 4.32444];
  const rows = [
    [50, 50, 0.5, 82.5381],
    [100, 50, 0.256092, 106.859],
  ] as const;
  for (const [below, above, level, expected] of rows) {
    const law = (c: number, dp: number, temperature: number) =>
      touching((c / 3600) * (1 / densityAt(temperature)), n, dp, densityAt(temperature));
    const net = solved(
      [
        { to: 0, law: law(below, level * head, 0) },
        { to: 0, height: 5, law: law(above, (1 - level) * head, 20) },
      ],
      [20],
      0,
    );
    compare({
      topic: TOPIC,
      what: `cracks of ${below} and ${above} m3/h/Pa^0.65, 5 m apart, 20 and 0 °C`,
      unit: 'm3/h',
      source: 'two power laws in a row under the weight of 5 m of air',
      mark: 'closed form',
      expected,
      got: 3600 * flowOf(net, 0),
      tolerance: { relative: 3e-4 },
      because: 'worked out with 9.81 m/s2 and a gas constant that differs in its fifth digit',
    });
  }
});
