import { expect, test } from 'vitest';
import type { RunInput } from '../../src/engine/run.ts';
import { simulate } from '../../src/engine/simulate.ts';
import { compileStep } from '../../src/engine/stepper.ts';
import { busyHome } from '../bench/busy-home.ts';
import { randomHome, randomHousehold, swingingWeather } from './random-home.ts';
import { runInput } from './record-run.ts';

/** Every number array within a value, copied, with the way to it. */
function numbersIn(value: unknown, way: string, into: Map<string, Float64Array>): void {
  if (value instanceof Float64Array) into.set(way, value.slice());
  else if (typeof value === 'object' && value !== null) {
    for (const [key, part] of Object.entries(value)) numbersIn(part, `${way}.${key}`, into);
  }
}

function everythingOf(input: RunInput, compiled: boolean): Map<string, Float64Array> {
  const found = new Map<string, Float64Array>();
  const { ledger, control } = simulate({ ...input, compiled }, [
    (trace) => numbersIn(trace, `day ${trace.firstStep}`, found),
  ]);
  numbersIn(ledger, 'ledger', found);
  numbersIn(control, 'control', found);
  return found;
}

/** The compiled step and the one in JavaScript come from one source and use no function that may round otherwise. */
function expectTheSame(input: RunInput): void {
  const plain = everythingOf(input, false);
  const compiled = everythingOf(input, true);
  expect([...compiled.keys()]).toEqual([...plain.keys()]);
  for (const [way, numbers] of plain) {
    const other = compiled.get(way)!;
    const first = numbers.findIndex((x, k) => !Object.is(x, other[k]));
    expect(first, `${way}[${first}]: ${numbers[first]} and ${other[first]}`).toBe(-1);
  }
}

test.each([1, 2, 3, 4, 5, 6])('both builds of the step agree to the last bit, home %i', (seed) => {
  const home = randomHome(2 + seed, seed);
  const household = randomHousehold(home, seed);
  const input = runInput({ home, weather: swingingWeather() }, { household, hours: 24 * 20 });
  expectTheSame(input);
});

test('also with devices, sensors and rules', () => {
  const { home, ruled } = busyHome(6);
  const household = randomHousehold(home, 7);
  const weather = swingingWeather();
  expectTheSame(runInput({ home, weather }, { household, automation: ruled, hours: 24 * 20 }));
});

test('a page whose policy forbids to compile takes the step as JavaScript', () => {
  class CompileError extends Error {
    override name = 'CompileError';
  }
  class Module {
    constructor() {
      throw new CompileError('Refused to compile');
    }
  }
  expect(compileStep({ Module })).toBeNull();
});

test('a module that is broken otherwise is no reason to go on quietly', () => {
  class Module {
    constructor() {
      throw new RangeError('out of memory');
    }
  }
  expect(() => compileStep({ Module })).toThrow('out of memory');
});
