import type { Run } from '../../engine/run.ts';
import type { Notice } from '../../home/notices.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';

type RuleReport = NonNullable<Run['control']>['rules'][number];

/** Rules that did nothing, or that nobody heard; one that stands for several rooms is told of once for all of them. */
export function ruleNotices(rules: readonly RuleReport[]): Notice[] {
  const told = (is: (rule: RuleReport) => boolean, say: (those: Told) => Notice): Notice[] =>
    together(rules.filter(is)).map((those) => say(toldOf(those, rules)));
  return [
    ...told(({ fired, activeHours }) => fired === 0 && activeHours === 0, neverFired),
    ...told(({ fired, activeHours }) => fired === 0 && activeHours > 0, activeBefore),
    ...told(({ tells, fired, couldAct }) => tells && fired >= FEW && couldAct < fired / 2, unheard),
  ];
}

/** A rule, or several of one series, in words. */
interface Told {
  readonly those: readonly RuleReport[];
  /** The rule "stale air" */
  readonly who: string;
  /** " in den and bath", " in all of its 5 rooms", or empty for a rule by itself. */
  readonly where: (every: 'all' | 'any') => string;
}

const neverFired = ({ who, where }: Told): Notice => ({
  id: 'rule-never-fired',
  text: `${who} never fired${where('any')}: its conditions and its gate never held together for long enough.`,
});

function activeBefore({ those, who, where }: Told): Notice {
  const hours = those.map(({ activeHours }) => activeHours);
  const [low, high] = [Math.min(...hours), Math.max(...hours)].map((each) => figureText(each, 0));
  const long = low === high ? low : `${low} to ${high}`;
  const again = those.some(({ tells }) => tells)
    ? ' It tells, or asks for a window, when it becomes active, and again only with "repeat after".'
    : '';
  return {
    id: 'rule-active-before',
    text: `${who} was active${where('all')} when the period began, stayed so for ${long} h and did not fire again: look at its levels.${again}`,
  };
}

function unheard({ those, who, where }: Told): Notice {
  const sum = (of: (rule: RuleReport) => number): number =>
    those.reduce((all, rule) => all + of(rule), 0);
  return {
    id: 'rule-unheard',
    text:
      `${who} fired ${sum(({ fired }) => fired)} times${where('all')}, and ${sum(({ couldAct }) => couldAct)} times somebody was home and ` +
      'awake within the hour to do something about it.',
  };
}

/** Rules by series, each rule by itself apart, in the order of the first of them. */
function together(rules: readonly RuleReport[]): (readonly RuleReport[])[] {
  const groups = new Map<unknown, RuleReport[]>();
  for (const rule of rules) {
    const key = rule.series?.number ?? rule;
    groups.set(key, [...(groups.get(key) ?? []), rule]);
  }
  return [...groups.values()];
}

function toldOf(those: readonly RuleReport[], rules: readonly RuleReport[]): Told {
  const { name, series } = those[0]!;
  if (series === undefined || those.length === 1) {
    return { those, who: `The rule "${name}"`, where: () => '' };
  }
  const all = rules.filter((rule) => rule.series?.number === series.number).length;
  const rooms = those.map((rule) => rule.series!.room);
  const isEvery = those.length === all && all > 2;
  const where = (every: string): string =>
    ` in ${isEvery ? `${every} of its ${all} rooms` : andList(rooms)}`;
  return { those, who: `The rule "${series.name}"`, where };
}

const FEW = 10;
