import { expect, test } from 'vitest';
import { askedMarkup, carriedBy } from '../../../src/report/page/asked-questions.ts';
import type { ReportStudy } from '../../../src/studies/report-study.ts';
import { all, readMarkup, textOf } from './read-markup.ts';

// What is seen of a question before anybody opens it, and what then.

const STOVE = {
  title: 'Buy purifier?',
  inShort: 'Buy it.',
  ...{ first: 'Mend the stove.', plan: 'purifier' },
  sentences: ['Mend the stove. Buy it. Dust halves.', 'Nothing else does.'],
};
const COOLER = {
  title: 'Cooler?',
  inShort: 'cooler saves 9 GBP, but damper.',
  ...{ first: '', plan: 'cooler' },
  sentences: ['cooler saves 9 GBP, but rooms are too damp.'],
};

test('what carries an answer does not say it again', () => {
  expect(carriedBy(STOVE)).toEqual(['Dust halves.', 'Nothing else does.']);
  expect(carriedBy(COOLER)).toEqual(COOLER.sentences);
  expect(carriedBy({ ...COOLER, sentences: [COOLER.inShort] })).toEqual([]);
  // Where only the stove is told in both, as where no purchase is asked about.
  expect(carriedBy({ ...STOVE, inShort: 'airing costs 9 GBP.' })).toEqual([
    'Buy it. Dust halves.',
    'Nothing else does.',
  ]);
});

test('what is to be done first stands by the answer, whether opened or not', () => {
  const asked = { questions: [COOLER, STOVE], surprise: '', caveat: '' };
  const study = { asked, purchase: { decision: { sentences: ['Not needed.'] } } };
  const read = readMarkup(askedMarkup(study as unknown as ReportStudy)!.markup);
  expect(all(read, 'summary').map(textOf)).toEqual([
    'Cooler? cooler saves 9 GBP, but damper.',
    'Buy purifier? Mend the stove. Buy it.',
  ]);
  expect(all(read, 'details').map((one) => textOf(all(one, 'p')[0]!))).toEqual([
    'cooler saves 9 GBP, but rooms are too damp.',
    'Dust halves. Nothing else does.',
  ]);
});

test('what is told again by what carries it is left out on paper', () => {
  const asked = { questions: [COOLER, STOVE], surprise: '', caveat: '' };
  const study = { asked, purchase: { decision: { sentences: [] } } };
  const { markup } = askedMarkup(study as unknown as ReportStudy)!;
  const unseen = all(readMarkup(markup), 'span').filter(
    ({ attributes }) => attributes['class'] === 'on-screen',
  );
  expect(unseen.map(textOf)).toEqual([COOLER.inShort]);
});

test('what has nothing to open does not open', () => {
  const bare = { ...COOLER, sentences: [COOLER.inShort] };
  const asked = { questions: [bare], surprise: '', caveat: '' };
  const study = { asked, purchase: { decision: { sentences: [] } } };
  const { markup } = askedMarkup(study as unknown as ReportStudy)!;
  expect(markup).not.toContain('<details>');
  expect(markup).toContain('cooler saves 9 GBP, but damper.');
});
