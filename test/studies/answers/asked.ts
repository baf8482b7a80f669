import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import type { PreparedPlan } from '../../../src/scenario/prepared.ts';
import type { AskedPlan } from '../../../src/studies/answers/asked.ts';
import { askedPlan } from '../../../src/studies/answers/plan-questions.ts';
import { readOnce } from '../../scenario/read-once.ts';
import { somePlan } from '../some-plan.ts';

const HOME = `title: Hand-made terrace
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
money: { currency: GBP, gas: { price: 0.07 }, electricity: { day: 0.27, night: 0.12, night hours: "00:30-04:30" } }
home:
  rooms:
    den: { floor area: 14, use: living }
    bath: { floor area: 6, use: bathroom }
heating: { setpoint: 21, hours: always }
household: { people: [{ who: adult, pattern: at home, sleeps in: den }] }
plans:
`;

/** Plans of a small home, prepared from the lines under `plans`. */
export function preparedPlans(plans: string): PreparedPlan[] {
  const scenario = readOnce(HOME + plans, 'home.yaml');
  return scenario.plans.map(({ name }) =>
    preparePlan(scenario, { plan: name, set: [], files: new Map() }),
  );
}

/** Plans of a small home with figures made by hand, in the same order; where there are none, those of a plain year. */
export function askedPlans(
  plans: string,
  figures: readonly Parameters<typeof somePlan>[1][] = [],
): AskedPlan[] {
  return preparedPlans(plans).map((prepared, k) =>
    askedPlan(prepared, somePlan(prepared.plan, figures[k])),
  );
}
