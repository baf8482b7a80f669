import { expect, test } from 'vitest';
import { questionAnswers } from '../../../src/studies/answers/question-answers.ts';
import { smokeFirst } from '../../../src/studies/verdict/smoke-first.ts';
import { askedPlans } from '../answers/asked.ts';

const STOVE = `devices: { stove: { kind: stove, room: den } }`;
const PURIFIER = `purifier: { kind: purifier, room: den, clean air: 300, runs: always }`;
const plans = (first: string) => `  now: { change: { ${first} } }
  purifier:
    based on: now
    change: { devices: { ${PURIFIER} } }
    purchases: [{ what: purifier, price: 160, lasts: 6 years }]
  airing: { based on: now, change: { household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] } } }
`;

test('a stove that leaks smoke is mended before anything is bought or opened', () => {
  const asked = askedPlans(plans(STOVE));
  expect(smokeFirst(asked[0]!.prepared)).toContain('carbon-monoxide alarm');
  const [bought, aired] = questionAnswers(asked);
  expect(bought!.title).toBe('Buy purifier for 160 GBP?');
  expect(bought!.sentences[0]).toMatch(
    /^A stove that leaks smoke leaks carbon monoxide too: before all else have its seals, flue and draught looked at by somebody competent, and fit a carbon-monoxide alarm; neither airing nor a purifier makes it safe\. \S/,
  );
  expect(aired!.sentences[0]).not.toContain('monoxide'); // once is enough
});

test('no stove, no such words', () => {
  const asked = askedPlans(plans(''));
  expect(smokeFirst(asked[0]!.prepared)).toBe('');
  const words = questionAnswers(asked).flatMap(({ sentences }) => sentences);
  expect(words.join(' ')).not.toContain('monoxide');
});
