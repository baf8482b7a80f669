import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { weeksIn } from '../../measures/years-in.ts';
import type { Option } from '../../studies/options.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { airChart } from '../charts/air-chart.ts';
import { alertsChart } from '../charts/alerts-chart.ts';
import type { Drawable } from './draw-twice.ts';
import { ofAir, PICTURE, type PictureId } from './picture-ids.ts';

/**
 * What the air carries as it is and with what is asked about, species by species; and when rules
 * ring, of what is asked about or else of the first plan whose rules ever do.
 */
export function airDrawables(study: ReportStudy): Drawable[] {
  const { options, purchase } = study;
  const baseline = options[0]!;
  const asked = purchase?.about.option ?? null;
  const shown = [baseline, ...(asked === null ? [] : [asked])];
  const ruled = [...(asked === null ? [] : [asked]), ...options].find(rings);
  return [
    ...countedSpecies([baseline.measures])
      .filter(({ name }) => Object.hasOwn(baseline.measures.species, name))
      .map(({ name, symbol }, k) => ofSpecies(name, symbol, shown, ofAir(k))),
    ...(ruled === undefined ? [] : [ofRules(ruled)]),
  ];
}

const rings = ({ measures }: Option): boolean => measures.alerts.fired > 0;

function ofSpecies(name: string, label: string, shown: readonly Option[], id: PictureId): Drawable {
  const { prepared, measures } = shown[0]!;
  const { unit, mean_outdoors: outdoors } = measures.species[name]!;
  const known = prepared.home.rooms
    .map((room, k) => {
      const { high: limit = Number.POSITIVE_INFINITY, hours = 0 } =
        prepared.bands[k]!.species[name] ?? {};
      return { name: room.name, limit, hours };
    })
    .filter((room) => shown.every((one) => Object.hasOwn(one.measures.rooms, room.name)));
  const levels = ({ rooms }: PlanMeasures) => known.map((room) => rooms[room.name]!.species[name]!);
  return {
    id,
    at: (width) =>
      airChart(
        {
          ...{ label, unit, outdoors, rooms: known },
          plans: shown.map((one) => ({ name: one.name, levels: levels(one.measures) })),
        },
        width,
      ),
  };
}

function ofRules({ name, measures: { alerts, period } }: Option): Drawable {
  const rules = Object.entries(alerts.by_rule)
    .filter(([, { tells }]) => tells)
    .map(([rule, { by_hour: byHour, could_act_by_hour: heardByHour }]) => ({
      ...{ name: rule, byHour, heardByHour },
    }))
    .sort((a, b) => sum(b.byHour) - sum(a.byHour));
  return {
    id: PICTURE.alerts,
    at: (width) => alertsChart({ plan: name, rules, weeks: weeksIn(period.hours) }, width),
  };
}

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);
