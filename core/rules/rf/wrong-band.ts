import { formatHertz } from '../../quantity/format.ts';
import { kindOf, unitName, unitOf } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { defineRule } from '../rule.ts';

interface Band {
  readonly minHz?: number | undefined;
  readonly maxHz?: number | undefined;
}

export const wrongBand = defineRule({
  id: 'rf/wrong-band',
  severity: 'fault',
  title: 'Not made for this frequency',
  compares: 'the plan’s frequency against the range of the transmitter, of every unit on the way and of the antenna',
  why: 'A filter keeps the power back, an antenna off its band sends it back, and a transmitter does not make it at all.',
  advice: 'Choose the unit for this band, or change the plan’s frequency.',
  source: 'the units’ own ranges',
  follows: [],
  messages: { outside: '{unit} is made for {range}, and the plan is for {frequency}.' },
  looksAt: {
    chain({ source, chain }, { station, trial }, report) {
      const hertz = station.plan.frequencyHz;
      const say = (place: Place & { unit: string }, band: Band) => {
        if (isInside(band, hertz)) return;
        report({
          message: 'outside',
          severity: 'fault',
          at: [place],
          values: { unit: unitName(station, place.unit), range: rangeOf(band), frequency: formatHertz(hertz) },
        });
      };
      say({ unit: source.unit }, source.spec);
      for (const { edge } of chain.steps)
        if (edge.origin.type === 'element' && edge.spec?.type === 'rfPath') say({ unit: edge.origin.unit }, edge.spec);
      for (const { load } of chain.ends) say({ unit: load.unit }, load.spec);
      for (const { port } of chain.ports) {
        const ref = rfPortRef(trial.circuit, port);
        const own = kindOf(station, unitOf(station, ref.unit)).ports.find((p) => p.id === ref.port);
        if (own) say({ unit: ref.unit }, own);
      }
    },
  },
});

const isInside = ({ minHz = 0, maxHz = Number.POSITIVE_INFINITY }: Band, hertz: number): boolean =>
  hertz >= minHz && hertz <= maxHz;

function rangeOf({ minHz, maxHz }: Band): string {
  if (minHz === undefined) return `up to ${formatHertz(maxHz ?? 0)}`;
  return maxHz === undefined ? `${formatHertz(minHz)} upwards` : `${formatHertz(minHz)} to ${formatHertz(maxHz)}`;
}
