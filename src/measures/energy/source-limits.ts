import type { TraceView } from '../../engine/record/trace.ts';
import type { Curve, HeatSource, Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { along } from '../../units/along.ts';
import { figureText } from '../../units/figure-text.ts';

/** How far heat sources went to their limits: of their power, and of what is known of their COP. */
export interface SourceLimits {
  observe(trace: TraceView): void;
  notices(): Notice[];
}

export function createSourceLimits({ sources }: Home): SourceLimits {
  const limits = sources.map((source) => ({
    source,
    conversion: conversionOf(source),
    most: source.powerCurve ?? level(source.power),
    coldest: coldestKnown(source),
    atMost: 0, // s, in spells of half a day and more
    spell: 0, // s
    heat: 0, // J
    beyond: 0, // J
  }));

  function observe({ steps, dt, home }: TraceView): void {
    for (const [k, own] of limits.entries()) {
      const { source, conversion, most, coldest } = own;
      const [fuel, backup] = [home.sourceFuel[k]!, home.sourceBackup[k]!];
      for (let s = 0; s < steps; s++) {
        const outdoor = home.outdoorTemperature[s]!;
        const heat = fuel[s]! * along(conversion, outdoor);
        own.heat += heat * dt;
        if (outdoor < coldest) own.beyond += heat * dt;
        const full = NEARLY * (along(most, outdoor) + (source.backup ?? 0));
        const before = own.spell;
        own.spell = heat + backup[s]! >= full ? before + dt : 0;
        if (own.spell >= LONG) own.atMost += before < LONG ? own.spell : dt;
      }
    }
  }

  const notices = (): Notice[] =>
    limits.flatMap(({ source, atMost, heat, beyond }) => [
      ...(atMost > 0 ? [tooSmall(source, atMost / 3600)] : []),
      ...(beyond > WORTH_A_WORD * heat ? [beyondTable(source, beyond / heat)] : []),
    ]);

  return { observe, notices };
}

const tooSmall = ({ name, power, backup = 0 }: HeatSource, hours: number): Notice => ({
  id: 'source-too-small',
  text:
    `The ${name} gave all it could (${figureText(power + backup, 0)} W${backup > 0 ? ' with its backup' : ''} at most) for ` +
    `${figureText(hours, 0)} h, in spells of half a day and longer: rooms may have been colder than their setpoints.`,
});

function beyondTable(source: HeatSource, share: number): Notice {
  const coldest = coldestKnown(source);
  const cop = figureText(along(conversionOf(source), coldest), 1);
  const kept =
    source.powerCurve === undefined
      ? 'and its power; real ones lose both. Give heating.cop and heating.power of colder days.'
      : 'there; real ones lose some of it. Give heating.cop of colder days.';
  return {
    id: 'cop-beyond-table',
    text: `The ${source.name} gave ${figureText(100 * share, 0)} % of its heat below ${figureText(coldest, 0)} °C outdoors, the coldest of which its COP is known. It is taken to keep a COP of ${cop} ${kept}`,
  };
}

/** Coldest outdoor temperature of a table of COP; nothing is colder than that of one number. [°C] */
function coldestKnown({ conversion }: HeatSource): number {
  const isTable = conversion.by === 'cop' && conversion.outdoor.length > 1;
  return isTable ? conversion.outdoor[0]! : Number.NEGATIVE_INFINITY;
}

/** Heat over fuel by outdoor temperature. [-] */
const conversionOf = ({ conversion }: HeatSource): Curve =>
  conversion.by === 'cop'
    ? { outdoor: conversion.outdoor, value: conversion.cop }
    : level(conversion.efficiency);

const level = (value: number): Curve => ({ outdoor: [0], value: [value] });

/** Share of the most that counts as all. [-] */
const NEARLY = 0.999;
/** Longer than rooms take to warm up in the morning. [s] */
const LONG = 12 * 3600;
/** Share of the heat below which it does not matter. [-] */
const WORTH_A_WORD = 0.05;
