import { isOpenGate } from '../../circuit/circuit.ts';
import { voltsBetween } from '../../keydown/feel.ts';
import { kindOf, placeOfContact, portName, unitOf } from '../../station/parts.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

export const lineOverRating = defineRule({
  id: 'keying/line-over-rating',
  severity: 'danger',
  title: 'The keyed line is too much for its switch',
  compares:
    'volts across a key, relay or transistor when it is open and amperes through it when it is closed against what it stands',
  why: 'A transistor output dies at the first press and usually stays closed: the station then sends by itself.',
  advice: 'Put a relay or a keying adapter of the right rating between the two.',
  source: 'the switch’s own ratings; a transistor output passes one polarity only',
  follows: ['drawing/fits-but-should-not', 'power/reversed-polarity'],
  messages: {
    volts: '{port} has to hold off {volts V} when it is open; it stands {limit V}.',
    amps: '{port} has to carry {amps A} when it is closed; it stands {limit A}.',
    polarity: '{port} has {volts V} across it; its transistor switches positive lines only.',
  },
  looksAt: {
    element({ index, part }, { station, trial }, report) {
      if (part.kind !== 'resistor' || part.gate.length === 0) return;
      const { unit, element } = part.origin;
      const pair = kindOf(station, unitOf(station, unit)).elements.find((e) => e.id === element);
      if (pair?.type !== 'contactPair') return;
      const ref = placeOfContact(unit, pair.from);
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const port = portName(station, ref);
        const base = { severity: 'danger', at: [ref], moment: name } as const;
        if (isOpenGate(part.gate, reach.on)) {
          const amps = Math.abs(reach.dc.ampsIn(index));
          if (amps > pair.maxAmps)
            report({ ...base, message: 'amps', values: { port, amps, limit: pair.maxAmps }, weight: amps });
          continue;
        }
        const volts = voltsBetween(reach.dc, part.a, part.b) ?? 0;
        const weight = Math.abs(volts);
        if (weight > pair.maxVolts)
          report({ ...base, message: 'volts', values: { port, volts, limit: pair.maxVolts }, weight });
        else if (pair.device === 'transistor' && volts < -0.7)
          report({ ...base, message: 'polarity', values: { port, volts }, weight });
      }
    },
  },
});
