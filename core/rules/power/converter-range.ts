import { placeOfContact, portName } from '../../station/parts.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { loadVolts, unitOfPart } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';

export const converterRange = defineRule({
  id: 'power/converter-range',
  severity: 'fault',
  title: 'The converter is outside its range',
  compares: 'a converter’s input voltage against its range, and its output current against its rating',
  why: 'Below its range it switches off or draws ever more current; overloaded it limits, and what it feeds fades.',
  advice: 'Feed it inside its range, or use one that gives the current.',
  source: 'the converter’s own figures',
  follows: ['power/short-circuit', 'power/reversed-polarity', 'power/supply-overloaded', 'power/fuse-will-open'],
  messages: {
    input: '{port} of the converter gets {volts V} {moment}; it works from {minV V} to {maxV V}.',
    output: '{port} of the converter has to give {amps A} {moment}; it is made for {limit A}.',
  },
  looksAt: {
    load({ index, part }, { station, trial }, report) {
      if (!part.converter) return;
      const ref = placeOfContact(unitOfPart(part), part.spec.plus);
      const { minV, maxV } = part.spec;
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const volts = loadVolts(reach, part);
        // With nothing on it at all it is not powered, and more than it stands is too much: other rules say so.
        if (volts < 1 || (volts >= minV && volts <= maxV)) continue;
        const values = { port: portName(station, ref), volts, minV, maxV, moment: momentWords[name] };
        const weight = Math.max(minV - volts, volts - maxV);
        report({ message: 'input', severity: 'fault', at: [ref], values, moment: name, weight });
      }
    },
    supply({ index, part }, { station, trial }, report) {
      if (!part.converter) return;
      const ref = placeOfContact(unitOfPart(part), part.spec.plus);
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const amps = reach.dc.ampsIn(index);
        const limit = part.spec.amps;
        if (amps <= limit) continue;
        const values = { port: portName(station, ref), amps, limit, moment: momentWords[name] };
        report({ message: 'output', severity: 'fault', at: [ref], values, moment: name, weight: amps });
      }
    },
  },
});
