import { airingFindings } from './assemble/airing.ts';
import { buildHome } from './assemble/build-home.ts';
import { nightHourFindings } from './assemble/build-prices.ts';
import { createDefaults } from './assemble/defaults.ts';
import { ruleWindowFindings } from './assemble/rule-window-findings.ts';
import { rawFindings } from './checks/raw-findings.ts';
import { type ScenarioData, scenarioModel } from './model/scenario-model.ts';
import { type Finding, findingsOf } from './unplaced-problem.ts';

/** A scenario as it is meant, or everything that is wrong with it. */
export type Validated =
  | { readonly data: ScenarioData; readonly findings: readonly [] }
  | { readonly data: null; readonly findings: readonly Finding[] };

/**
 * Check plain values against the model and against one another.
 *
 * The same check serves the file as written, a plan's change laid on it, and command-line settings.
 */
export function validate(raw: unknown): Validated {
  const parsed = scenarioModel.safeParse(raw);
  const findings = [
    ...(parsed.success ? [] : findingsOf(parsed.error.issues)),
    ...rawFindings(raw),
  ];
  if (parsed.success && findings.length === 0) {
    const nowhere = { latitude: 0, longitude: 0, elevation: 0 };
    const defaults = createDefaults();
    const { home, plans, findings: drawn } = buildHome(parsed.data, nowhere, defaults);
    findings.push(...drawn, ...airingFindings(parsed.data, home.openings, plans));
    findings.push(...ruleWindowFindings(parsed.data, home.openings, plans));
    findings.push(...nightHourFindings(parsed.data));
    if (findings.length === 0) return { data: parsed.data, findings: [] };
  }
  return { data: null, findings };
}
