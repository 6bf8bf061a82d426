import type { SupplyPart } from '../../circuit/circuit.ts';
import { placeOfContact, portName, unitName } from '../../station/parts.ts';
import { suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { feedersOf } from '../../trial/power/feeders.ts';
import { defineRule } from '../rule.ts';

export const supplyRunaway = defineRule({
  id: 'power/supply-runaway',
  severity: 'doubt',
  title: 'A supply that could run away',
  compares: 'the voltage that a supply gives if its regulator fails against what each unit on it stands',
  why: 'A pass transistor that fails shorts the raw voltage through to everything that is plugged in.',
  advice: 'Use a supply with over-voltage protection, or put a crowbar with a fuse before it at the supply.',
  source: 'the supply’s and the units’ own figures',
  follows: ['power/over-voltage', 'power/unregulated'],
  messages: {
    raw: 'If {supply} fails, {port} gets {volts V}; it stands {limit V}, and nothing stops it.',
  },
  looksAt: {
    load({ part }, { station, trial }, report) {
      const isOver = (supply: SupplyPart) => (supply.spec.faultVolts ?? 0) > part.spec.absMaxV;
      // Which supply feeds it has to be traced, which few loads are worth.
      if (!suppliesOf(trial.circuit).some((s) => isOver(s.part))) return;
      for (const { part: supply } of feedersOf(trial.circuit, trial.receive.on, part.plus)) {
        const { faultVolts } = supply.spec;
        if (faultVolts === undefined || !isOver(supply)) continue;
        const place = placeOfContact(unitOfPart(part), part.spec.plus);
        report({
          message: 'raw',
          severity: 'doubt',
          at: [{ unit: unitOfPart(supply) }, place],
          values: {
            supply: unitName(station, unitOfPart(supply)),
            port: portName(station, place),
            volts: faultVolts,
            limit: part.spec.absMaxV,
          },
          weight: faultVolts - part.spec.absMaxV,
        });
      }
    },
  },
});
