import { describe, expect, test } from 'vitest';
import { allOptions, type OptionsSetup, proposalsFor } from '../../src/studies/options.ts';
import { InputProblems } from '../../src/units/problem.ts';
import { AIRED, DRY, linearScenario, linearWorld } from './linear-world.ts';

const world = () =>
  linearWorld(
    linearScenario({ plans: ['as-lived: { description: as it is, change: {} }', AIRED, DRY] }),
  );
const ask = (more: Partial<OptionsSetup> = {}, { asked: _, ...rest } = world()) =>
  allOptions({ ...rest, plans: ['as-lived', 'aired', 'dry'], set: [], ...more });
const names = (options: readonly { readonly name: string }[]) => options.map(({ name }) => name);

describe('all that could be done', () => {
  test('the plans in their order, then what the scenario has not', async () => {
    const options = await ask();
    expect(options.map(({ name, origin }) => `${origin} ${name}`)).toEqual([
      ...['baseline as-lived', 'plan aired', 'plan dry'],
      ...['proposed warmer', 'proposed fan', 'proposed warmer-and-fan'],
    ]);
    expect(options[0]!.description).toBe('as it is');
    expect(options[4]!.description).toBe(
      'an extract fan in the bath that runs while it is humid there',
    );
  });

  test('what is proposed is known from the baseline alone', async () => {
    const options = await ask();
    const { scenario } = world();
    const [baseline] = options;
    const proposed = proposalsFor({ scenario, set: [] }, baseline!.name, baseline!.measures);
    expect(names(proposed)).toEqual(names(options.filter(({ origin }) => origin === 'proposed')));
    expect(proposed).toHaveLength(3);
  });

  test('the first plan asked for is the baseline, which proposals build on', async () => {
    const options = await ask({ plans: ['aired', 'as-lived'] });
    expect(options.map(({ origin }) => origin).slice(0, 3)).toEqual([
      ...['baseline', 'plan', 'proposed'],
    ]);
    const proposed = options.filter(({ origin }) => origin === 'proposed');
    for (const { variant, raw } of proposed) {
      expect(variant.plan).toBe('aired');
      expect(raw).toHaveProperty(['household', 'airing']);
    }
  });

  test('what a plan has that was not asked for is not proposed either', async () => {
    expect(names(await ask({ plans: ['as-lived'] }))).toEqual(
      names(await ask()).filter((name) => !['aired', 'dry'].includes(name)),
    );
  });

  test('settings are laid on all of them, before what is proposed', async () => {
    const set = ['/heating/setpoint=19'];
    const options = await ask({ set });
    for (const { variant } of options) expect(variant.set[0]).toBe(set[0]);
    const warmer = options.find(({ name }) => name === 'warmer')!;
    expect(warmer.variant.set).toEqual([...set, '/heating/setpoint=21']);
    expect(warmer.raw).toHaveProperty(['heating', 'setpoint'], 21);
    expect(warmer.prepared.household.setpoints.map(({ base }) => base)).toEqual([21, 21]);
  });

  test('each is run once, and bears its own name in its figures and prepared plan', async () => {
    const { asked, ...rest } = world();
    const options = await ask({}, { asked: [], ...rest });
    expect(asked).toEqual(options.map(({ variant }) => variant));
    for (const { name, measures, prepared, description: says } of options) {
      expect([measures.plan, prepared.plan, prepared.description]).toEqual([name, name, says]);
    }
  });

  test('prices that nobody gave are told apart from those of the scenario', async () => {
    const options = await ask();
    const [fan] = options.find(({ name }) => name === 'fan')!.assumedPurchases;
    expect(fan).toMatchObject({ what: 'extract fan, fitted', price_low: 120, price_high: 450 });
    expect(options.find(({ name }) => name === 'fan')!.prepared.purchases).toEqual([fan]);
    const dry = options.find(({ name }) => name === 'dry')!;
    expect([dry.assumedPurchases, dry.prepared.purchases.length]).toEqual([[], 1]);
  });

  test('figures that come later are waited for', async () => {
    const { run } = world();
    const late = await ask({ run: async (variant) => run(variant) });
    expect(late).toEqual(await ask());
  });
});

describe('what cannot be', () => {
  test('a plan that the scenario does not have', async () => {
    await expect(ask({ plans: ['as-lived', 'drye'] })).rejects.toThrow(
      'lines.yaml: plan: expected one of the plans as-lived, aired, dry, got "drye" (did you mean "dry"?)',
    );
  });

  test('a setting that no home can have', async () => {
    await expect(ask({ set: ['/heating/setpoint=99'] })).rejects.toThrow(InputProblems);
  });

  test('no plan at all', async () => {
    await expect(ask({ plans: [] })).rejects.toThrow('allOptions: needs at least one plan');
  });
});
