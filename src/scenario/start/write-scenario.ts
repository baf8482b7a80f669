import { factsOfAnswers } from './plan-facts.ts';
import { type PlanOffer, planOffers } from './plan-offers.ts';
import { type Answers, said } from './question.ts';
import { homeLines } from './write-home.ts';
import {
  coolingLines,
  deviceLines,
  heatingLines,
  householdLines,
  moneyLines,
} from './write-use.ts';
import { indented, inline, keyLine } from './yaml-text.ts';

/** What a scenario needs besides the answers. */
export interface ScenarioPaths {
  /** The weather file as the scenario names it. */
  readonly weather: string;
  /** The schema as an editor finds it from there. */
  readonly schema: string;
  /** Ids of questions that nobody answered, so that their answers are only usual ones. */
  readonly usual: readonly string[];
  /** What has to be known of the weather; null for nothing. */
  readonly remark: string | null;
}

/** The text of a first scenario, with remarks, from complete answers. */
export function scenarioText(
  answers: Answers,
  { weather, schema, usual, remark }: ScenarioPaths,
): string {
  const lines = [
    `# yaml-language-server: $schema=${schema}`,
    '#',
    '# Written by roombalance start. Change what you know better: an editor that knows the schema',
    '# explains every key, docs/scenario.md lists them, and roombalance check tells what is assumed.',
    ...(usual.length === 0
      ? []
      : remarkLines(`Nobody answered, so that it is as usual: ${usual.join(', ')}.`)),
    keyLine('title', said(answers, 'title')),
    '',
    ...(remark === null ? [] : remarkLines(remark)),
    keyLine('weather', weather),
    '',
    ...homeLines(answers),
    '',
    ...heatingLines(answers),
    '',
    ...coolingLines(answers),
    ...householdLines(answers),
    '',
    ...moneyLines(answers),
    '',
    ...deviceLines(answers),
    'plans: # each is the home with a change; prices of things are invented, put in yours',
    ...indented(['as-lived:', '  description: as it is', '  change: {}']),
    ...indented(
      planOffers(factsOfAnswers(answers), [answers['bothers'] ?? []].flat()).flatMap(planLines),
    ),
  ];
  return `${lines.join('\n')}\n`;
}

/** A remark as lines of comment. */
function remarkLines(text: string): string[] {
  const lines = ['#'];
  for (const word of text.replaceAll(/\s+/g, ' ').split(' ')) {
    if (lines.at(-1)!.length + word.length < WIDTH) lines.push(`${lines.pop()} ${word}`);
    else lines.push(`# ${word}`);
  }
  return lines;
}

const WIDTH = 100;

/** A plan as lines of a mapping of plans. */
export function planLines({ name, description, change, purchases = [] }: PlanOffer): string[] {
  return [
    `${inline(name)}:`,
    ...indented([
      keyLine('description', description),
      keyLine('change', change),
      ...(purchases.length === 0 ? [] : [keyLine('purchases', purchases)]),
    ]),
  ];
}
