import { expect, test } from 'vitest';
import { legalExtremes } from './legal-extremes.ts';
import { tryCases } from './try-cases.ts';

// Balances within 1e-9 of what passed, finite figures, humidity from 0 to 100 %: see verdict.ts.
test('300 legal homes in extreme weather run, balanced and finite', () => {
  const { found } = tryCases(legalExtremes, 1, 300);
  expect(found.map(({ number, wrong }) => `${number}: ${wrong.slice(0, 300)}`)).toEqual([]);
});
