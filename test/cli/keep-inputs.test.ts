import { expect, test } from 'vitest';
import { keepInputs } from '../../src/cli/keep-inputs.ts';
import { main } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';

test.each([
  ['the scenario', 'homes/h.yaml'],
  ['its weather by another way to it', 'homes/../weather/w.csv'],
])('refuses to write over %s', (_, output) => {
  expect(() => keepInputs('--trace <file.csv>', output, ['homes/h.yaml', 'weather/w.csv'])).toThrow(
    `error: option '--trace <file.csv>' argument '${output}' is invalid. It is read by the same call; name another file.`,
  );
});

test('lets any other file be written, and none', () => {
  expect(() => keepInputs('-o <file>', 'other.csv', ['h.yaml', undefined])).not.toThrow();
  expect(() => keepInputs('-o <file>', undefined, ['h.yaml', undefined])).not.toThrow();
});

test('a recipe is not lost to the year made of it', async () => {
  const { io, said, files } = fakeIo({ 'r.yaml': 'title: kept' });
  expect(await main(['weather', 'make', 'r.yaml', '-o', './r.yaml'], io)).toBe(1);
  expect(files).toEqual({ 'r.yaml': 'title: kept' });
  expect(said.err).toContain("argument './r.yaml' is invalid");
});
