import { createDay, layOutDay } from '../control/day.ts';
import { groundTemperature } from '../home/ground.ts';
import type { Remark } from '../home/remarks.ts';
import { saturationTable } from '../physics/moist-air/saturation-table.ts';
import type { Weather } from '../weather/weather.ts';
import { addAirBalance, createAir, moveAir } from './air.ts';
import { type Books, closeBooks, openBooks, type Stores } from './books.ts';
import { bookHeat, createHeat, guessTemperatures, stepHeat, storedHeat } from './heat.ts';
import { layOutModel, type Model } from './model.ts';
import { createOutdoors, layOutOutdoors } from './outdoors.ts';
import type { Run, RunInput } from './run.ts';
import { dayInYear, type Season, seasonOf } from './season.ts';
import { bookSpecies, createSpecies, stepSpecies, storedSpecies } from './species.ts';
import { settleStart } from './start.ts';
import { createStretch, recordStep } from './stretch.ts';
import { layOutSunlight, type Sunlight } from './sunlight.ts';
import type { Observer } from './trace.ts';
import { createWater, settleWater, stepWater, storedWater } from './water.ts';

/**
 * Simulate one home over one period.
 *
 * The year is walked a day at a time: what people do and what the weather is are laid out for the
 * day, its control steps are taken one by one (air, heat, water, species, in that order), and the
 * day is shown to the observers. A lead-in before the period lets walls forget the first guess;
 * neither observers nor ledger see it.
 *
 * @throws RangeError for a step that does not divide an hour, or a period the weather does not cover
 */
export function simulate(input: RunInput, observers: readonly Observer[]): Run {
  requireSteps(input);
  const { home, household, weather, dt, start, hours, leadInDays } = input;
  const model = layOutModel(home, meanPressure(weather), dt);
  const names = home.species.map((s) => s.name);
  const perDay = DAY / dt;
  const day = createDay(household, model.rooms, names.length, perDay);
  const outdoors = createOutdoors(weather, names, perDay);
  const facings = model.boundaries.flatMap((b) => (b.is === 'outdoors' ? [b] : []));
  const sunlight = layOutSunlight(home, weather, facings);
  const season = seasonOf(weather);
  const air = createAir(home);
  const heat = createHeat(model);
  const water = createWater(model);
  const species = names.map((_, index) => createSpecies(model, index));
  const stretch = createStretch(model, perDay);
  const saturation = saturationTable();
  const end = start + hours * HOUR;
  const months = monthRows(start, end);
  const books = openBooks(model.rooms, names.length, months.list);
  const scrap = openBooks(model.rooms, names.length, [0]);

  const stores = (): Stores => ({
    energy: storedHeat(model, heat),
    water: storedWater(model, water),
    species: species.map((s) => storedSpecies(model, s)),
  });

  const walk = (from: number, to: number, into: Books, shift: number, counted: boolean): void => {
    for (let dayStart = from; dayStart < to; dayStart += DAY) {
      const steps = Math.min(perDay, Math.round((to - dayStart) / dt));
      layOutDay(day, household, dayStart, dt, steps);
      layOutOutdoors(outdoors, weather, names, dayStart, dt, steps, shift);
      for (let s = 0; s < steps; s++) {
        const at = s * model.rooms;
        const outdoor = outdoors.temperature[s]!;
        const outdoorHumidity = outdoors.humidityRatio[s]!;
        const row = counted ? months.rowAt(dayStart + s * dt) * model.rooms : 0;
        setBoundaries(
          model,
          heat.boundary,
          sunlight,
          season,
          outdoor,
          outdoors.interval[s]!,
          dayStart + s * dt,
        );
        setSun(model, heat.sun, sunlight, outdoors.interval[s]!);
        guessTemperatures(model, heat);
        moveAir(
          air,
          model.paths,
          heat.guess,
          outdoor,
          outdoors.windSpeed[s]!,
          model.density,
          day.openings,
          s * model.paths.openings,
          day.doorways,
          s * model.paths.doorways,
        );
        stepHeat(model, heat, air, day, at, outdoor);
        bookHeat(model, heat, air, day, at, outdoor, into, row);
        stepWater(model, water, air, day, at, outdoor, outdoorHumidity, heat.mean, saturation);
        settleWater(model, water, air, day, at, outdoorHumidity, heat.phase, into, row);
        for (let q = 0; q < species.length; q++) {
          const level = outdoors.species[q]?.[s] ?? home.species[q]!.outdoor;
          stepSpecies(
            model,
            species[q]!,
            air,
            day.peopleSpecies[q]!,
            day.thingsSpecies[q]!,
            at,
            level,
          );
          bookSpecies(model, species[q]!, air, day, q, at, level, into, row);
        }
        addAirBalance(air, model.paths, into.airNet, into.airThrough);
        if (counted) {
          recordStep(stretch, model, heat, water, species, air, day, s, outdoor, outdoorHumidity);
        }
      }
      if (!counted) continue;
      stretch.begin(Math.round((dayStart - start) / dt), steps, dayStart);
      for (const observe of observers) observe(stretch.view);
    }
  };

  const leadIn = leadInDays * DAY;
  const coversLeadIn = weather.periodic || start - leadIn >= weather.start;
  const shift = coversLeadIn ? 0 : leadIn;
  settleStart(model, heat, water, species, input, season);
  walk(start - leadIn, start, scrap, shift, false);
  const before = stores();
  walk(start, end, books, 0, true);
  return {
    start,
    hours,
    dt,
    ledger: closeBooks(books, before, stores()),
    notices: noticesOf(weather),
  };
}

function setBoundaries(
  { boundaries }: Model,
  values: Float64Array,
  sunlight: Sunlight,
  season: Season,
  outdoor: number,
  interval: number,
  utc: number,
): void {
  let plane = 0;
  for (let b = 0; b < boundaries.length; b++) {
    const boundary = boundaries[b]!;
    if (boundary.is === 'outdoors') {
      const sun = sunlight.on[plane++]![interval]!;
      values[b] = outdoor + boundary.perSun * sun - boundary.skyLoss;
    } else if (boundary.is === 'ground') {
      values[b] = groundTemperature(
        season.mean,
        season.amplitude,
        boundary.damping,
        Math.min(366, dayInYear(utc)),
        season.coldest + GROUND_LAG,
      );
    } else {
      values[b] = boundary.temperature;
    }
  }
}

function setSun(m: Model, values: Float64Array, sunlight: Sunlight, interval: number): void {
  const from = interval * m.rooms;
  for (let i = 0; i < m.rooms; i++) values[i] = sunlight.gain[from + i]!;
}

/** Rows of the ledger, one for each calendar month that the period touches. */
function monthRows(start: number, end: number): { list: number[]; rowAt: (utc: number) => number } {
  const starts: number[] = [];
  const list: number[] = [];
  const first = new Date(start * 1000);
  for (let q = 0; ; q++) {
    const utc = Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + q, 1) / 1000;
    if (utc >= end) break;
    starts.push(utc);
    list.push((first.getUTCMonth() + q) % 12);
  }
  let row = 0;
  return {
    list,
    rowAt: (utc) => {
      while (row + 1 < starts.length && utc >= starts[row + 1]!) row++;
      return row;
    },
  };
}

function meanPressure({ pressure, count }: Weather): number {
  let sum = 0;
  for (let k = 0; k < count; k++) sum += pressure[k]!;
  return sum / count;
}

function requireSteps({ weather, dt, start, hours }: RunInput): void {
  if (!(dt >= 60 && dt <= HOUR && HOUR % dt === 0)) {
    throw new RangeError(
      `simulate: the control step must divide an hour into whole parts of at least a minute, got ${dt} s`,
    );
  }
  if (!(Number.isInteger(hours) && hours > 0)) {
    throw new RangeError(`simulate: the period must be a whole number of hours, got ${hours}`);
  }
  const end = weather.start + weather.count * weather.step;
  if (!weather.periodic && (start < weather.start || start + hours * HOUR > end)) {
    throw new RangeError('simulate: the weather does not cover the period');
  }
}

function noticesOf(weather: Weather): Remark[] {
  return weather.sun === 'none'
    ? [
        {
          id: 'no-sun',
          text: 'The weather file has neither irradiance nor cloud: no sun shines in this run. Heating comes out too high and rooms too cold on sunny days.',
        },
      ]
    : [];
}

const HOUR = 3600;
const DAY = 86_400;
/** How far the ground under a floor lags behind the outdoor year; about a month (ISO 13370, from memory). [d] */
const GROUND_LAG = 30;
