import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { planText } from '../../../src/scenario/yaml/plan-text.ts';
import { prepareVariant, variantScenario } from '../../../src/studies/plan-variant.ts';
import { AS_IT_IS, type Trial } from '../../../src/studies/trial/knobs.ts';
import { trialChange, trialOffer, trialSettings } from '../../../src/studies/trial/trial.ts';
import { readOnce } from '../../scenario/read-once.ts';

const TEXT = readFileSync('scenarios/terrace.yaml', 'utf8');

function home(text = TEXT, plan = 'as-lived', set: readonly string[] = []) {
  const scenario = readOnce(text, 'home.yaml', { plans: [plan], doubts: false });
  const variant = { plan, set };
  const raw = variantScenario(scenario, variant);
  const prepared = prepareVariant(scenario, new Map(), variant);
  const offer = trialOffer(raw, prepared, 'main bedroom', 0.25);
  const settings = (trial: Partial<Trial>) =>
    trialSettings(raw, prepared, offer, { ...AS_IT_IS, ...trial });
  return { scenario, offer, settings, set };
}

describe('what a home offers', () => {
  test('is every knob that it has, where it stands today', () => {
    expect(home().offer).toEqual({
      ...{ heats: true, setpoint: 21, night: 16, presence: true, airing: true },
      ...{ room: 'main bedroom', electricity: 0.25 },
    });
  });

  test('is no dehumidifier where there is one, no presence where heating heeds it', () => {
    expect(home(TEXT, 'dry-bedroom').offer.room).toBeNull();
    expect(home(TEXT, 'when-home').offer.presence).toBe(false);
  });

  test('is no thermostat where nothing heats', () => {
    const { offer } = home(TEXT, 'as-lived', ['/heating={ source: none }']);
    expect(offer).toMatchObject({ heats: false, setpoint: null, night: null, presence: false });
  });
});

describe('what is tried', () => {
  const { settings, scenario } = home();

  test('is nothing where nothing is turned', () => {
    expect(settings({})).toEqual([]);
  });

  test.each([
    [{ warmer: -2 }, ['/heating/setpoint=19', '/heating/setback=14']],
    [{ night: 15 }, ['/heating/night/setpoint=15', '/heating/night/from="22:30"']],
    [{ presence: true }, ['/heating/thermostat=null', '/heating/gate="when present"']],
    [{ dehumidifier: 50 }, ['/devices/tried dehumidifier/target="50 %"']],
    [{ electricity: 1.5 }, ['/money/electricity/day=0.405', '/money/electricity/night=0.18']],
  ] as const)('%o', (trial, words) => {
    for (const word of words) expect(settings(trial)).toContain(word);
  });

  test('a night as it is stays as it is', () => {
    expect(settings({ night: 16 })).toEqual([]);
  });

  test('airing comes besides the habits there are', () => {
    const [word] = settings({ airing: 20 });
    expect(word).toMatch(/^\/household\/airing=\[.+"lasts":20.*\]$/);
    expect(word).toContain('10 h'); // windows tilted in summer stay
  });

  test('all at once can be prepared, and the plan that is copied does the same', () => {
    const words = settings({
      ...{ warmer: 1.5, night: 14, presence: true, airing: 15, dehumidifier: 45 },
      electricity: 0.5,
    });
    const set = prepareVariant(scenario, new Map(), { plan: 'as-lived', set: words });
    const plan = planText('tried', 'as tried', trialChange(words));
    const text = `${TEXT}\n${plan.replaceAll(/^/gm, '  ')}`;
    const own = readOnce(text, 'home.yaml', { plans: ['tried'], doubts: false });
    const written = prepareVariant(own, new Map(), { plan: 'tried', set: [] });
    expect(set.home).toEqual(written.home);
    expect(set.automation).toEqual(written.automation);
    expect(set.household).toEqual(written.household);
    expect(set.prices).toEqual(written.prices);
  });
});
