import { writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { accuracyPage } from './accuracy-page.ts';
import { fittedTwin, type Twin } from './twins.ts';
import { UNLIKE } from './unlike.ts';

test('a twin is foreseen better than by guessing, and its temperatures within half a kelvin', async () => {
  // sensors of 0.1 K and 0.8 points; the model is the truth, so what is left is the search's own
  // and three weeks tell as much of it as five
  const { fit, hidden } = await fittedTwin(2, 'alike', 21);
  expect(fit.skilled).toBe(true);
  expect(fit.foreseen.filter(({ judgement }) => judgement.skill <= 0)).toEqual([]);
  const warm = fit.foreseen.filter(({ channel }) => channel.quantity === 'temperature');
  expect(Math.max(...warm.map(({ judgement }) => judgement.rmse))).toBeLessThan(0.5);
  const parameters = fit.stages.flatMap((stage) => stage.fit.parameters);
  const held = parameters.filter(({ adjustable: { name }, low, high }) => {
    const value = hidden.get(name)!;
    return value >= low && value <= high;
  });
  // all but two: of fourteen ranges of 95 % more than two miss in 3 of 100 homes
  expect(held.length).toBeGreaterThanOrEqual(parameters.length - 2);
  expect(fit.runs).toBeLessThanOrEqual(552);
}, 120_000);

test.runIf(process.env['UPDATE_ACCURACY'] === '1')(
  'UPDATE_ACCURACY=1 writes docs/accuracy.md anew',
  async () => {
    const twins: Twin[] = [];
    for (let seed = FIRST_SEED; seed < FIRST_SEED + 15; seed++) {
      const kinds = Object.keys(UNLIKE).filter((kind) => kind === 'alike' || seed % 4 === 0);
      for (const kind of kinds) twins.push(await fittedTwin(seed, kind));
      writeFileSync('docs/accuracy.md', accuracyPage(twins));
    }
    expect(twins).toHaveLength(15 + 4 * 4);
  },
  3_600_000,
);

/** Least widths of ranges and ways of the search were chosen on twins of seeds below. */
const FIRST_SEED = 102;
