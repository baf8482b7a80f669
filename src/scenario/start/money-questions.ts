import { usualIn } from '../presets/currencies.ts';
import { PRICE } from '../presets/prices.ts';
import { fuelOf } from './heating-questions.ts';
import { priceTrouble } from './price-answer.ts';
import { type Question, said } from './question.ts';

/** What energy costs. */
export const MONEY_QUESTIONS: readonly Question[] = [
  {
    id: 'currency',
    kind: 'line',
    text: () => 'In which currency are the bills?',
    initial: (answers) => currencyAt(said(answers, 'timezone')),
    check: (line) => (/^\S{1,8}$/.test(line) ? null : 'a currency in one word, such as GBP or EUR'),
  },
  {
    id: 'tariff',
    kind: 'one',
    text: () => 'How is electricity priced?',
    choices: () => [
      { value: 'one price', label: 'one price at all times' },
      { value: 'day and night', label: 'by day and by night' },
      { value: 'cheap night', label: 'dear days, and a few very cheap hours at night' },
      { value: 'file', label: 'by the hour or half-hour, in a CSV file', hint: 'time,price' },
    ],
    initial: () => 'one price',
  },
  {
    id: 'electricity',
    kind: 'line',
    text: (answers) => `What does a kWh of electricity cost, in ${said(answers, 'currency')}?`,
    initial: (answers) => usualPrice(said(answers, 'tariff'), usualIn(said(answers, 'currency'))),
    check: (line, answers) =>
      priceTrouble(line, said(answers, 'tariff'), said(answers, 'currency')),
  },
  {
    id: 'fuel price',
    kind: 'line',
    text: (answers) =>
      `What does a kWh of ${fuelOf(answers) ?? 'fuel'} cost, in ${said(answers, 'currency')}?`,
    unless: (answers) =>
      fuelOf(answers) === null
        ? `the heat is ${said(answers, 'heat')}: its price is that of electricity`
        : null,
    initial: (answers) => {
      const { value } = PRICE[fuelOf(answers) as keyof typeof PRICE];
      return String(usualIn(said(answers, 'currency'))(value));
    },
    check: (line, answers) => {
      const currency = said(answers, 'currency');
      const trouble = priceTrouble(line, 'one price', currency);
      return trouble && `a price of a kWh, such as ${usualIn(currency)(0.07)}`;
    },
  },
];

function currencyAt(timezone: string): string {
  if (timezone === 'Europe/London') return 'GBP';
  if (timezone.startsWith('America/')) return timezone === 'America/Toronto' ? 'CAD' : 'USD';
  if (timezone.startsWith('Australia/')) return 'AUD';
  return OTHERS[timezone] ?? 'EUR';
}

const OTHERS: Readonly<Record<string, string>> = {
  'Europe/Zurich': 'CHF',
  'Europe/Prague': 'CZK',
  'Europe/Warsaw': 'PLN',
  'Europe/Copenhagen': 'DKK',
  'Europe/Oslo': 'NOK',
  'Europe/Stockholm': 'SEK',
  'Pacific/Auckland': 'NZD',
  'Asia/Tokyo': 'JPY',
};

/** Invented, of the size of a bill. @param usual  the same in the currency of the bills */
function usualPrice(tariff: string, usual: (price: number) => number): string {
  if (tariff === 'file') return 'prices.csv';
  const [day, night, hours] = USUAL[tariff] ?? [0.27];
  return night === undefined ? `${usual(day)}` : `${usual(day)} / ${usual(night)} ${hours}`;
}

type UsualPrice = readonly [price: number] | readonly [day: number, night: number, hours: string];
const USUAL: Readonly<Record<string, UsualPrice>> = {
  'one price': [0.27],
  'day and night': [0.29, 0.17, '23:30-06:30'],
  'cheap night': [0.31, 0.09, '00:30-05:30'],
};
