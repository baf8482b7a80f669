import { describe, expect, test } from 'vitest';
import { planDraws } from '../../../src/studies/doubts/plan-draws.ts';
import type { PlanVariant } from '../../../src/studies/plan-variant.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { DRY, linearScenario, linearWorld } from '../linear-world.ts';

const more = 'doubts: { /money/electricity/price: [0.2, 0.4], /heating/setpoint: [16, 20] }';
const world = linearWorld(
  linearScenario({ plans: ['as-lived: { change: {} }', DRY], electricity: '{ price: 0.3 }', more }),
);
const setup = {
  ...{ scenario: world.scenario, files: world.files, air: false, samples: 20, seed: 3, years: 1 },
  ...{ baseline: world.named('as-lived'), plan: world.named('dry') },
  run: (variant: PlanVariant) => world.run(variant),
};

describe('a dehumidifier of straight lines', () => {
  test('each draw is the same in both, so that only what differs moves the difference', async () => {
    const { pairs, difference, ranked, changeOf } = (await planDraws(setup))!;
    expect(pairs).toHaveLength(20);
    // 22.5 and 300 kWh at 0.2 to 0.4, evenly: a tenth lies below 0.22, a tenth above 0.38.
    expect(difference.money.as_is).toBeCloseTo(112.5, 9);
    expect(Math.abs(difference.money.p10 - 88.5)).toBeLessThan(3); // a twentieth of 60
    expect(Math.abs(difference.money.p90 - 136.5)).toBeLessThan(3);
    expect([difference.money.less, difference.damp.less]).toEqual([0, 1]);
    expect(ranked[0]).toEqual({
      path: '/money/electricity/price',
      correlation: expect.closeTo(1, 9),
    });
    // The setpoint moves both bills alike, and by how much it is drier.
    expect(ranked[1]!.path).toBe('/heating/setpoint');
    const { p10, median, p90 } = changeOf(({ measures }) => measures.money.total_per_year);
    expect({ p10, median, p90 }).toMatchObject({
      ...{ p10: difference.money.p10, p90: difference.money.p90 },
      median: difference.money.median,
    });
  });

  test('nothing is drawn where that is not asked for, or where no draw is a home', async () => {
    expect(await planDraws({ ...setup, samples: 0 })).toBeNull();
    const refused = (variant: PlanVariant) => {
      if (variant.set.length > 0) throw new InputProblems([]);
      return world.run(variant);
    };
    expect(await planDraws({ ...setup, samples: 2, run: refused })).toBeNull();
    const broken = () => Promise.reject(new Error('a fault of the program'));
    await expect(planDraws({ ...setup, samples: 2, run: broken })).rejects.toThrow(
      'a fault of the program',
    );
  });
});
