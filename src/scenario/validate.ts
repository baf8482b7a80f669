import { isConcentrationUnit } from '../species/concentration-unit.ts';
import { ownSpecies } from '../species/own-species.ts';
import type { KnownSpecies } from '../species/species-table.ts';
import { attempt } from './assemble/attempt.ts';
import { ruleWindowFindings } from './assemble/control/rule-window-findings.ts';
import { coolingFindings } from './assemble/cooling-findings.ts';
import { UNLISTED } from './assemble/defaults.ts';
import { blindFindings } from './assemble/home/blind-findings.ts';
import { buildHome } from './assemble/home/build-home.ts';
import { airingFindings } from './assemble/people/airing.ts';
import { rawFindings } from './checks/raw-findings.ts';
import { mapping, textOf, type UncheckedMapping } from './checks/tolerant-readers.ts';
import { unitAsWritten } from './model/own-species.ts';
import { type ScenarioData, scenarioModel } from './model/scenario-model.ts';
import { HEIGHT } from './presets/rooms.ts';
import { type Finding, findingsOf } from './unplaced-problem.ts';

/** A scenario as it is meant, or everything that is wrong with it. */
export type Validated =
  | { readonly data: ScenarioData; readonly findings: readonly [] }
  | { readonly data: null; readonly findings: readonly Finding[] };

/**
 * Check plain values against the model and against one another; once, however often the same are asked
 * about, because nobody changes them.
 *
 * The same check serves the file as written, a plan's change laid on it, and command-line settings.
 */
export function validate(raw: unknown): Validated {
  if (typeof raw !== 'object' || raw === null) return checked(raw);
  const found = CHECKED.get(raw) ?? checked(raw);
  CHECKED.set(raw, found);
  return found;
}

const CHECKED = new WeakMap<object, Validated>();

function checked(raw: unknown): Validated {
  const parsed = modelOf(raw).safeParse(raw);
  const findings = [
    ...(parsed.success ? [] : findingsOf(parsed.error.issues)),
    ...rawFindings(raw),
  ];
  if (parsed.success && findings.length === 0) {
    findings.push(...builtFindings(parsed.data));
    if (findings.length === 0) return { data: parsed.data, findings: [] };
  }
  return { data: null, findings };
}

/** What only shows when the home is built. */
function builtFindings(data: ScenarioData): Finding[] {
  const findings = tooLarge(data);
  if (findings.length > 0) return findings;
  const nowhere = { latitude: 0, longitude: 0, elevation: 0 };
  const built = attempt(() => buildHome(data, nowhere, NO_FILES, UNLISTED), ['home'], findings);
  if (built === null) return findings;
  const { home, plans } = built;
  return [
    ...built.findings,
    ...airingFindings(data, home.openings, plans),
    ...ruleWindowFindings(data, home.openings, plans),
    ...coolingFindings(data, built),
    ...blindFindings(data, built),
  ];
}

/** The model of a scenario, kept as long as the species that scenarios name stay the same. */
export function modelOf(raw: unknown): ReturnType<typeof scenarioModel> {
  const own = declaredSpecies(mapping(raw));
  const key = JSON.stringify(own.map(({ name, symbol, unit }) => [name, symbol, unit]));
  if (kept?.key !== key) kept = { key, model: scenarioModel(own) };
  return kept.model;
}

let kept: { readonly key: string; readonly model: ReturnType<typeof scenarioModel> } | null = null;

/** Rooms that together hold more air than any home for which leakage was ever measured. */
function tooLarge({ home }: ScenarioData): Finding[] {
  const volume = Object.values(home.rooms).reduce(
    (sum, room) => sum + room['floor area'] * (room.height ?? home.height ?? HEIGHT.value),
    0,
  );
  if (volume <= MOST) return [];
  const expected = `rooms of at most ${MOST} m3 in all`;
  return [{ path: ['home', 'rooms'], expected, got: `${Math.round(volume)} m3` }];
}

/**
 * The species that a scenario names itself, in its order, as far as they can be read.
 *
 * One whose unit is wrong counts as having ppm, so that only its unit is complained of.
 */
function declaredSpecies(raw: UncheckedMapping): KnownSpecies[] {
  return Object.entries(mapping(raw['air'], 'own species')).map(([name, given]) => {
    const { label, unit } = mapping(given);
    const written = unitAsWritten(textOf(unit));
    return ownSpecies({
      name,
      label: textOf(label) === '' ? name : textOf(label),
      unit: isConcentrationUnit(written) ? written : 'ppm',
    });
  });
}

const NO_FILES: ReadonlyMap<string, string> = new Map();
/** Volume of a home. [m3] */
const MOST = 100_000;
