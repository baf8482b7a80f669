import type { Automation } from '../control/automation.ts';
import type { Household } from '../control/household.ts';
import { indexConditions } from '../control/sensors/condition-index.ts';
import type { Fuel } from '../home/home.ts';
import type { Prices } from '../home/prices.ts';
import type { LocalClock } from '../units/local-clock.ts';
import { nearestHint } from '../units/nearest-name.ts';
import { COMMON } from '../units/preset.ts';
import { InputProblems } from '../units/problem.ts';
import { countedSpecies } from './assemble/carried-species.ts';
import { buildAutomation } from './assemble/control/build-automation.ts';
import { createDefaults, type Defaults } from './assemble/defaults.ts';
import { usualSeasonOf } from './assemble/heating/heating-season.ts';
import { type BuiltHome, buildHome } from './assemble/home/build-home.ts';
import { levelFileFindings } from './assemble/level-files.ts';
import { buildPrices, priceFileFindings } from './assemble/money/build-prices.ts';
import { activityData } from './assemble/people/activities.ts';
import { askAboutElsewhere } from './assemble/people/activity-rooms.ts';
import { buildHousehold } from './assemble/people/build-household.ts';
import { peopleData } from './assemble/people/people.ts';
import { infantRooms } from './assemble/people/person-stays.ts';
import { mouldClasses, roomBands } from './assemble/room-bands.ts';
import { type Place, sitePlace } from './assemble/site-place.ts';
import { planLayers } from './check-plan.ts';
import { newNameFinding } from './checks/new-names.ts';
import type { ScenarioData } from './model/scenario-model.ts';
import { asInBritain } from './notices/as-in-britain.ts';
import { cautionsOf } from './notices/cautions.ts';
import { clockChangeRemarks } from './notices/clock-changes.ts';
import { heatsPastBand } from './notices/heats-past-band.ts';
import { oddBands } from './notices/odd-bands.ts';
import { oddValues } from './notices/odd-values.ts';
import { mergedFor, planChain } from './plan-chain.ts';
import type { PreparedPlan } from './prepared.ts';
import { DISCOUNT } from './presets/prices.ts';
import { STEP } from './presets/step.ts';
import type { Scenario } from './read-scenario.ts';
import { unitAt } from './unit-at.ts';
import { type Finding, placed } from './unplaced-problem.ts';
import { modelOf, validate } from './validate.ts';
import { startsWith } from './yaml/layers.ts';
import { readSettings, type Setting, settingLayers, withSetting } from './yaml/settings.ts';
import { longitudeClock, zoneClock } from './zone-clock.ts';

export interface PlanChoice {
  /** Name of a plan; null is the first of the file. */
  readonly plan: string | null;
  /** `/pointer=value` words of the command line, laid on last and in their order. */
  readonly set: readonly string[];
  /** Texts of `Scenario.files`, by the path that the scenario wrote. */
  readonly files: ReadonlyMap<string, string>;
}

/**
 * One plan with every choice made: changes laid on, checked again, and all that nobody gave filled
 * in and listed.
 *
 * @throws InputProblems for a plan that does not exist and for values that cannot be, each placed
 *   at the plan's line or the command-line words that it came from
 */
export function preparePlan(scenario: Scenario, choice: PlanChoice): PreparedPlan {
  const plan = planNamed(scenario, choice.plan);
  const settings = readSettings(choice.set);
  const names = namesOf(scenario, plan.name);
  const merged = mergedFor(scenario.yaml.value, names);
  const fresh: Finding[] = [];
  const raw = settings.reduce<unknown>((before, setting) => {
    const finding = newNameFinding(before, setting, settings);
    if (finding !== null) fresh.push(finding);
    return withSetting(before, setting);
  }, merged);
  const layers = [...planLayers(scenario.yaml, names), ...settingLayers(settings)];
  const known = settings.length === 0 ? scenario.checked.get(plan.name) : undefined;
  const { data, findings } = known === undefined ? validate(raw) : { data: known, findings: [] };
  const refuse = (found: readonly Finding[]) => new InputProblems(placed(found, raw, layers));
  const fixed = fixedFindings(settings);
  if (fresh.length > 0) throw refuse([...fresh, ...besides(fresh, findings)]);
  if (data === null) throw refuse(ownFindings(findings, settings, fixed));
  const missing = [
    ...priceFileFindings(data, choice.files),
    ...levelFileFindings(data, choice.files),
  ];
  if (fixed.length + missing.length > 0) throw refuse([...fixed, ...missing]);

  const defaults = createDefaults();
  const model = modelOf(raw);
  const place = sitePlace(data, choice.files, defaults, refuse);
  const clock = clockOf(data, place, defaults);
  const built = buildHome(data, place, choice.files, defaults);
  const people = peopleData(data, defaults);
  const done = activityData(data, people, defaults, built.plans);
  const household = buildHousehold(data, built, { people, done, clock }, defaults);
  const kinds = done.map(({ what }) => what);
  const acting = buildAutomation(data, built, household, kinds, defaults);
  const prices = buildPrices(data, usedFuels(built, household), clock, choice.files, defaults);
  const automation = knowingPrices(acting, prices);
  const bands = roomBands(data, place.latitude, built.plans, infantRooms(people, built.plans));
  const discount = data.money?.['discount rate'];
  const usual = usualSeasonOf(data, place.latitude, built.home.emitters);
  const nightTariff = prices.fuels.electricity?.tariff.by === 'blocks';
  return {
    scenario: data.title,
    plan: plan.name,
    description: plan.description,
    home: built.home,
    household,
    automation,
    bands,
    mouldClasses: mouldClasses(data, built.plans, defaults),
    prices,
    purchases: purchasesOf(scenario, names),
    discountRate: defaults.number(['money', 'discount rate'], discount, DISCOUNT),
    period: { from: data.period?.from ?? null, to: data.period?.to ?? null },
    usualSeason: usual && {
      months: usual.months,
      below: usual.meanBelow.value,
      belowAtMost: usual.meanBelow.high,
    },
    dt: 60 * (data.step ?? STEP),
    assumed: defaults.assumed.map((one) => ({
      ...one,
      unit: typeof one.value === 'string' ? '' : unitAt(model, one.path),
    })),
    cautions: [
      ...oddValues({ data, home: built.home, floors: built.floors, household, automation, prices }),
      ...askAboutElsewhere(done, built.plans),
      ...oddBands(built.home.rooms, bands, countedSpecies(data)),
      ...heatsPastBand(built.home, household, bands),
      ...cautionsOf({ home: built.home, household, automation, people, nightTariff }),
      ...clockChangeRemarks(raw, clock),
    ],
    remarks: asInBritain(data, defaults.assumed, built.home.panes),
  };
}

function planNamed(scenario: Scenario, name: string | null): Scenario['plans'][number] {
  const found =
    name === null ? scenario.plans[0] : scenario.plans.find((plan) => plan.name === name);
  if (found !== undefined) return found;
  const names = scenario.plans.map((plan) => plan.name);
  const hint = nearestHint(name ?? '', names);
  const expected = `one of the plans ${names.join(', ')}`;
  const got = JSON.stringify(name);
  const place = { file: scenario.file, line: 0, column: 0, where: 'plan' };
  throw new InputProblems([{ ...place, expected, got, hint }]);
}

function namesOf(scenario: Scenario, name: string): readonly string[] {
  const chain = planChain(scenario.yaml.value, name);
  return 'names' in chain ? chain.names : [];
}

/** Findings that do not lie within others. */
const besides = (others: readonly Finding[], findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ path }) => !others.some((other) => startsWith(path, other.path)));

/** Settings must not change what all plans share and what was read before them. */
function fixedFindings(settings: readonly Setting[]): Finding[] {
  return settings
    .filter(({ steps }) => READ_BEFORE.includes(steps[0]!))
    .map(({ steps }) => ({
      path: steps,
      expected: 'a setting of the home or its people',
      got: `${steps[0]}, which was read before`,
    }));
}

/**
 * What is wrong, without what settings leave out of a section that they must not touch anyway: a
 * plan, of which nothing else is laid on here, would seem to lack the rest.
 */
function ownFindings(
  findings: readonly Finding[],
  settings: readonly Setting[],
  fixed: readonly Finding[],
): readonly Finding[] {
  const own = findings.filter(
    ({ path }) =>
      !fixed.some((each) => each.path[0] === path[0]) ||
      settings.some(({ steps }) => startsWith(path, steps)),
  );
  return own.length > 0 ? own : fixed;
}

function clockOf(data: ScenarioData, place: Place, defaults: Defaults): LocalClock {
  const zone = data.site?.timezone;
  const known = zone === undefined ? null : zoneClock(zone);
  if (known !== null) return known;
  defaults.word(['site', 'timezone'], undefined, 'whole hours by its longitude', COMMON);
  return longitudeClock(place.longitude);
}

/** Control with the tariff of electricity, where one of its conditions goes by it. */
function knowingPrices(automation: Automation, { fuels }: Prices): Automation {
  const { conditions } = indexConditions(automation);
  const tariff = fuels.electricity?.tariff;
  if (tariff === undefined) return automation;
  if (!conditions.some(({ quantity }) => quantity === 'electricity price')) return automation;
  return { ...automation, electricityTariff: tariff };
}

const usedFuels = ({ home }: BuiltHome, { activities }: Household) =>
  new Set<Fuel>([
    ...home.sources.map(({ fuel }) => fuel),
    ...home.devices.flatMap(({ does }) => (does.kind === 'stove' ? (['wood'] as const) : [])),
    ...activities.flatMap(({ gas = 0 }) => (gas > 0 ? (['gas'] as const) : [])),
    'electricity',
  ]);

/** What has to be bought for a plan and those it builds on. */
function purchasesOf(scenario: Scenario, names: readonly string[]): PreparedPlan['purchases'] {
  return names.flatMap((name) => scenario.purchases.get(name) ?? []);
}

const READ_BEFORE = ['invented', 'weather', 'doubts', 'fitted', 'plans'];
