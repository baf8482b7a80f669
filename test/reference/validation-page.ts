import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';
import type { ComparisonNote } from './compare.ts';
import type { Judged } from './judged-code.ts';

/**
 * Collects every comparison the tests made and holds docs/validation.md against them.
 *
 * A whole run with UPDATE_VALIDATION=1 writes the page; a whole run without it fails when the page
 * differs. A partial run (some files only, or with failures) leaves the page alone.
 */
export class ValidationPage implements Reporter {
  private partial = false;

  onTestRunStart(specifications: readonly unknown[]): void {
    const quick = process.env['QUICK'] === '1';
    this.partial = quick || specifications.length < MANY_FILES || process.argv.length > 3;
  }

  async onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): Promise<void> {
    const failed = errors.length > 0 || modules.some((m) => !m.ok());
    if (this.partial || failed) return;
    const { judgedAt } = await import('./judged-code.ts'); // it loads the compiler
    const rows = modules
      .flatMap((m) => [...m.children.allTests()])
      .flatMap((t) => t.meta().comparisons ?? [])
      .map((row) => ({ ...row, judges: judgedAt(row.at) }));
    const page = write(rows);
    if (process.env['UPDATE_VALIDATION'] === '1') {
      writeFileSync(PAGE, page);
    } else if (!existsSync(PAGE) || readFileSync(PAGE, 'utf8') !== page) {
      process.stderr.write(`${PAGE} is not what the tests say: run "npm run validation"\n`);
      process.exitCode = 1;
    }
  }
}

type Row = ComparisonNote & { readonly judges: Judged };

function write(rows: readonly Row[]): string {
  const topics = [...new Set(rows.map((r) => r.topic))].sort();
  const lines = [
    '# Checked against the outside',
    '',
    'Written by the tests; do not edit (`npm run validation` makes it anew). Every row is asserted',
    'by a test on each run. The tolerance is what the source promises or the rounding of its print.',
    '',
    '| mark | meaning |',
    '|---|---|',
    '| published | read where the source says |',
    '| published arithmetic | the same, and the printed answer follows from the printed inputs |',
    '| from memory | of the named standard or handbook, to be checked against a bought copy |',
    '| common practice | no source |',
    '| closed form | worked out from an exact solution: tests the numerics, not the world |',
    "| library | another program's routine gave it |",
    '',
    '| judges | meaning |',
    '|---|---|',
    '| program | formulas and data that the program uses, or what a run of it gave |',
    '| oracle | a formula that only the tests use, to judge the program by |',
    '| both | the one put through the other |',
    '',
    `${rows.length} comparisons: ${count(rows, 'program')} judge the program, ` +
      `${count(rows, 'oracle')} an oracle, ${count(rows, 'both')} both. ` +
      'The worst, as a share of what is allowed:',
    '',
    ...table(worst(rows)),
  ];
  for (const topic of topics) {
    lines.push('', `## ${topic}`, '', ...table(rows.filter((r) => r.topic === topic).sort(byWhat)));
  }
  return `${lines.join('\n')}\n`;
}

function table(rows: readonly Row[]): string[] {
  return [
    '| what | expected | got | difference | allowed | source | mark | judges | tolerance because |',
    '|---|---|---|---|---|---|---|---|---|',
    ...rows.map((r) => {
      const cells =
        r.kind === 'figure'
          ? [`${number(r.expected)} ${r.unit}`, number(r.got), difference(r), number(r.allowed)]
          : [`${number(r.low)} to ${number(r.high)} ${r.unit}`, number(r.got), 'inside', ''];
      return `| ${[r.what, ...cells, r.source, r.mark, r.judges, r.because].map(cell).join(' | ')} |`;
    }),
  ];
}

function worst(rows: readonly Row[]): Row[] {
  return rows
    .filter((r) => r.kind === 'figure')
    .map((r) => ({ r, used: r.allowed === 0 ? 0 : Math.abs(r.got - r.expected) / r.allowed }))
    .sort((a, b) => b.used - a.used || byWhat(a.r, b.r))
    .slice(0, 12)
    .map(({ r }) => r);
}

function difference(r: Row & { kind: 'figure' }): string {
  const off = r.got - r.expected;
  // Differences far below what is allowed are rounding, and rounding is not the same everywhere.
  return Math.abs(off) < 1e-3 * r.allowed || off === 0 ? '~0' : off.toPrecision(2);
}

function number(x: number): string {
  if (x === 0) return '0';
  return Number.isInteger(x) && Math.abs(x) < 1e9 ? String(x) : String(Number(x.toPrecision(5)));
}

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const count = (rows: readonly Row[], judges: Judged): number =>
  rows.filter((r) => r.judges === judges).length;
const byWhat = (a: Row, b: Row): number => (a.what < b.what ? -1 : a.what > b.what ? 1 : 0);

const PAGE = 'docs/validation.md';
const MANY_FILES = 10;
