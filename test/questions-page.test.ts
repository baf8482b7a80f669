import { readFileSync } from 'node:fs';
import type { Command } from 'commander';
import { describe, expect, test } from 'vitest';
import { programOf } from '../src/cli/main.ts';
import { preparePlan } from '../src/scenario/prepare-plan.ts';
import { readScenario } from '../src/scenario/read-scenario.ts';
import { fakeIo } from './cli/fake-io.ts';

const PAGE = readFileSync('docs/questions.md', 'utf8');
const TERRACE = readFileSync('scenarios/terrace.yaml', 'utf8');

/** Blocks of code of a language, in the order of the page. */
const blocks = (language: string): string[] =>
  [...PAGE.matchAll(new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``, 'g'))].map((m) => m[1]!);

const plansOf = (block: string): string[] =>
  [...block.matchAll(/^([a-z-]+):$/gm)].map((m) => m[1]!);

describe('docs/questions.md', () => {
  const all = blocks('yaml').join('').replaceAll(/^/gm, '  ').trimEnd();
  const begin = /^plans:\n {2}as-lived:\n.*\n.*\n/m.exec(TERRACE)!;
  const text = `${TERRACE.slice(0, begin.index)}${begin[0]}${all}\n`;
  const named = blocks('yaml').flatMap(plansOf);

  test('has its plans each once', () => {
    expect(named.length).toBeGreaterThanOrEqual(15);
    expect(new Set(named).size).toBe(named.length);
  });

  test('the terrace takes every plan of it', () => {
    const scenario = readScenario(text, 'terrace.yaml', { doubts: false });
    expect(scenario.plans.map(({ name }) => name)).toEqual(['as-lived', ...named]);
    for (const { name } of scenario.plans) {
      const plan = preparePlan(scenario, { plan: name, set: [], files: new Map() });
      expect(plan.home.rooms, name).toHaveLength(7);
    }
  });

  const commands = blocks('sh').flatMap((block) => block.trim().split('\n'));
  test.each(commands)('%s is understood', async (command) => {
    const words = [...command.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word);
    expect(words.shift()).toBe('roombalance');
    const called: string[] = [];
    const program = programOf(fakeIo().io);
    const quieten = (one: Command): void => {
      one.exitOverride();
      if (one.commands.length > 0) one.commands.forEach(quieten);
      else one.action(() => void called.push(one.name()));
    };
    quieten(program);
    await program.parseAsync(words, { from: 'user' });
    expect(called).toEqual([words[0]]);
    const about = words[words.indexOf('--about') + 1];
    if (words.includes('--about')) expect(named).toContain(about);
  });

  test('what a command varies is a value of the terrace', () => {
    const scenario = readScenario(text, 'terrace.yaml', { plans: 'first', doubts: false });
    const pointers = [...PAGE.matchAll(/--vary "(\/[^=]+)=(\d+)/g)];
    expect(pointers.length).toBeGreaterThan(0);
    for (const [, pointer, value] of pointers) {
      const set = [`${pointer}=${value}`];
      expect(() => preparePlan(scenario, { plan: null, set, files: new Map() })).not.toThrow();
    }
  });
});
