import { type BandEdge, highKey } from '../../measures/band-hours.ts';
import { coldSpotHours, roomHours } from '../../measures/comfort/room-hours.ts';
import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { Option } from '../../studies/options.ts';
import type { PurchaseStudy } from '../../studies/purchase-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { moneyText } from './option-words.ts';

/**
 * A purchase that is not against damp, in sentences: what it costs, what it changes by 24 room-hours
 * or more, and that nobody judges it.
 */
export function purchaseInWords({ about, sum }: PurchaseStudy, baseline: Option): string[] {
  const { name, measures } = about.option;
  const money = moneyText(Math.abs(sum.net), measures);
  const changes = kindsOf([measures, baseline.measures]).flatMap(({ words, of }) => {
    const more = Math.round(of(measures) - of(baseline.measures));
    if (Math.abs(more) < NOTABLE) return [];
    return [`${Math.abs(more)} ${more > 0 ? 'more' : 'fewer'} room-hours ${words}`];
  });
  return [
    `${name} ${sum.net < 0 ? 'saves' : 'costs'} ${money} a year, purchase cost included.`,
    changes.length === 0
      ? 'It changes no kind of hours by 24 room-hours or more.'
      : `Against ${baseline.name} there are ${changes.join('; ')}, in ${figureText(measures.period.hours / 24, 0)} days.`,
    'Whether that is worth the money is for those who breathe the air: the program weighs purchases against damp only.',
  ];
}

interface Kind {
  readonly words: string;
  readonly of: (measures: PlanMeasures) => number;
}

/** What harms most comes first. */
const kindsOf = (plans: readonly PlanMeasures[]): readonly Kind[] => [
  ...countedSpecies(plans)
    .toReversed()
    .map(({ name, symbol }) => ({ words: `high in ${symbol}`, of: anyTime(highKey(name)) })),
  ...OTHERS,
];

const OTHERS: readonly Kind[] = [
  { words: 'too damp', of: anyTime('humidity_high') },
  { words: 'with a cold spot over 80 %', of: coldSpotHours },
  { words: 'too dry', of: anyTime('humidity_low') },
  {
    words: 'too cold with somebody there',
    of: (m) => roomHours(m, 'outside_band_occupied_hours', 'temperature_low'),
  },
];

function anyTime(key: BandEdge): (measures: PlanMeasures) => number {
  return (measures) => roomHours(measures, 'outside_band_hours', key);
}

const NOTABLE = 24; // room-hours
