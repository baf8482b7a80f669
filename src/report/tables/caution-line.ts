import type { CautionedPlan } from '../cautions-of-all.ts';

/** What plans caution about in a few words each, those of all plans first; nothing where there is nothing. */
export function cautionLine(plans: readonly CautionedPlan[]): string {
  const ids = [...new Set(plans.flatMap(({ cautions }) => cautions.map(({ id }) => id)))];
  const ofAll = (id: string): boolean =>
    plans.every(({ cautions }) => cautions.some((caution) => caution.id === id));
  const words = (wanted: boolean): string =>
    ids
      .filter((id) => ofAll(id) === wanted)
      .map((id) => IN_SHORT[id] ?? id.replaceAll('-', ' '))
      .join('; ');
  const [all, some] = [words(true), words(false)];
  if (all === '') return some === '' ? '' : `Cautions of some plans: ${some}.`;
  return `Cautions: ${all}.${some === '' ? '' : ` Some plans: ${some}.`}`;
}

const IN_SHORT: Readonly<Record<string, string>> = {
  'co-alarm': 'burning fuel needs a carbon-monoxide alarm',
  infant: 'infant: a guide only',
  frail: 'frail people: a guide only',
  frost: 'pipes may freeze where nothing heats',
  'price-assumed': 'a price is invented',
  'all-prices-assumed': 'no price is given, so that money is a guess',
  'price-unknown': 'a price is missing, and what its currency is worth is not known',
  'levels-apart': 'some floors or ceilings lead nowhere',
  'odd-level': 'a level may stand in another unit',
  'odd-band': 'a band ends below where it begins',
  'nobody-airs': 'nobody is in to air',
  'activity-elsewhere': 'a room may be missing',
  'blinds-in-winter': 'blinds keep out winter sun',
  'low-setpoint': 'settings fall below 18 °C',
  mould: 'mould index: a risk, not a finding',
  'model-limits': 'many values are assumed',
  'sleepers-unseen': 'sensors miss sleepers',
  unattended: 'devices run unattended',
  dehumidifier: 'drying treats a symptom',
  humidifier: 'humidifiers want cleaning',
  'against-each-other': 'devices, heating or windows work against each other',
  purifier: 'purifiers bring no fresh air',
  stove: 'sweep the chimney',
  'stove-air': 'a tight home may starve the stove',
  spillage: 'fans may draw fumes back',
  'stove-depressurised': 'the stove may lack draught',
  'source-too-small': 'the source of heat is too small for the coldest days',
  'cop-beyond-table': 'the COP of the coldest days is not known',
  'heats-past-band': 'heating is set above what counts as fine',
  'heating-without-need': 'heating runs in months that need none',
};
