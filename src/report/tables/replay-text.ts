import type { Replay } from '../../studies/replay/replay-log.ts';
import { figureText } from '../../units/figure-text.ts';
import { type Column, columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

type Rule = Replay['rules'][number];

/** What rules would have made of a log, in plain text. */
export function replayText(replay: Replay, width: number): string {
  const { scenario, plan, from, to, rules, notes } = replay;
  const wrap = (text: string, first = '') => wrapText(text, first, width);
  return [
    wrap(`${scenario}, plan ${plan}: its rules on what was logged, ${from} to ${to}.`),
    rules.map((rule) => wrap(ruleInWords(rule))).join('\n'),
    ruleTable(rules, width),
    latest(replay, width),
    ...notes.map((text) => wrap(text, 'note: ')),
  ].join('\n\n');
}

function ruleInWords(rule: Rule): string {
  const { name, fired, could_act, windows, unknown_hours } = rule;
  const blind =
    unknown_hours < 1
      ? ''
      : ` Its readings are not known for ${figureText(unknown_hours, 0)} hours.`;
  if (fired === 0) return `${name}: would not have fired.${blind}`;
  const awake = 'somebody at home was awake then or within the hour';
  const told =
    fired === 1
      ? `once; ${could_act === 1 ? awake : awake.replace('somebody', 'nobody')}`
      : `${fired} times, ${figureText(rule.per_week, 1)} a week; in ${could_act} of them ${awake}`;
  const acted =
    windows === null
      ? ''
      : ` The window stood open already in ${windows.open_already}, was opened within the hour in ` +
        `${windows.opened_within_the_hour}, and stayed shut in ${windows.stayed_shut}.`;
  return `${name}: would have fired ${told}.${acted}${blind}`;
}

function ruleTable(rules: readonly Rule[], width: number): string {
  const { figures, words } = columnsOf(rules);
  const column = (head: string, figure: (rule: Rule) => number | undefined): Column =>
    figures(head, (rule) => figureText(figure(rule), 0));
  return textTable(
    [
      words('rule', ({ name }) => name),
      column('fired', (rule) => rule.fired),
      column('home', (rule) => rule.someone_home),
      column('awake', (rule) => rule.someone_awake),
      column('could\nact', (rule) => rule.could_act),
      column('held\nback', (rule) => rule.held_back),
      column('missed', (rule) => rule.missed),
      column('was\nopen', (rule) => rule.windows?.open_already),
      column('opened\nin 1 h', (rule) => rule.windows?.opened_within_the_hour),
      column('stayed\nshut', (rule) => rule.windows?.stayed_shut),
    ],
    width,
  );
}

/** The last firings, one a line. */
function latest({ events }: Replay, width: number): string {
  const shown = events.slice(-MOST);
  if (shown.length === 0) return 'No rule would have fired.';
  const who = ({ someone_awake, someone_home }: (typeof shown)[number]) =>
    someone_awake ? 'somebody awake' : someone_home ? 'all asleep' : 'nobody home';
  const { words } = columnsOf(shown);
  const table = textTable(
    [
      words('fired', ({ local }) => local),
      words('rule', ({ rule }) => rule),
      words('who', who),
      words('window', ({ window }) => window),
    ],
    width,
  );
  const before = events.length - shown.length;
  const clock = "Times are those of the home's clock.";
  return `${table}\n\n${clock}${before === 0 ? '' : ` ${before} before these; --json has all.`}`;
}

const MOST = 12;
