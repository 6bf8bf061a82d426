import { isMetal, isOpenGate } from '../../circuit/circuit.ts';
import { kindOf, portOfRef, unitName, unitOf } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import type { UnitElement } from '../../station/schema/unit-kind.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { conductorsOf, joinedTo } from '../../trial/metal/conductors.ts';
import { suppliesOf } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';
import type { Things } from '../things.ts';

/** What goes past a meter does not matter below this share. */
const missedShare = 0.05;

export const switchBypassed = defineRule({
  id: 'power/switch-bypassed',
  severity: 'fault',
  title: 'Current goes past the switch or the meter',
  compares: 'the two sides of each switch and each meter in a power lead, with all that joins them elsewhere',
  why: 'A switch or cut-off in the minus does nothing while a braid, a USB lead or an earth wire joins its two sides, and a meter counts only what flows through it.',
  advice: 'Switch and measure in the plus lead; or take every minus, and every earth, from the far side of it.',
  source: 'Kirchhoff’s current law; common practice',
  follows: ['power/short-circuit', 'drawing/fits-but-should-not'],
  messages: {
    switch: '{unit} is open, yet its two sides are joined elsewhere: what hangs on it stays on.',
    meter: '{unit} sees {amps A} of the {total A} that flow.',
  },
  looksAt: {
    element({ index, part }, { station, trial }, report) {
      if (!isMetal(part)) return;
      const element = inLine(station, part.origin);
      if (!element) return;
      const { circuit } = trial;
      const { unit } = part.origin;
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const around = conductorsOf(circuit, reach.on, (_, i) => i === index);
        const base = { at: [{ unit }] as const, moment: name };
        if (element.type === 'contactPair') {
          if (!isOpenGate(part.gate, reach.on) && joinedTo(around, part.a).has(part.b))
            report({ ...base, message: 'switch', severity: 'fault', values: { unit: unitName(station, unit) } });
          continue;
        }
        const own = joinedTo(around, part.a);
        const total = suppliesOf(circuit)
          .filter((s) => own.has(s.part.minus) !== own.has(s.part.plus))
          .reduce((sum, s) => sum + Math.abs(reach.dc.ampsIn(s.index)), 0);
        const amps = Math.abs(reach.dc.ampsIn(index));
        if (own.has(part.b) ? false : total - amps <= Math.max(0.01, missedShare * total)) continue;
        report({
          ...base,
          message: 'meter',
          severity: 'fault',
          values: { unit: unitName(station, unit), amps, total },
          weight: total - amps,
        });
      }
    },
  },
});

/** An element that is a switch or a meter with both its sides in power ports. */
function inLine(station: Station, { unit, element: id }: Things['element']['part']['origin']): InLine | null {
  const kind = kindOf(station, unitOf(station, unit));
  const element = kind.elements.find((e) => e.id === id);
  if (!element || !isInLine(element)) return null;
  const isPower = (ref: string) => kind.ports.find((p) => p.id === portOfRef(ref))?.class === 'dc';
  return isPower(element.from) && isPower(element.to) ? element : null;
}

type InLine = Extract<UnitElement, { type: 'contactPair' | 'conductor' }>;

const isInLine = (element: UnitElement): element is InLine =>
  element.type === 'contactPair' || (element.type === 'conductor' && element.measures === true);
