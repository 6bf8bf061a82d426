import { swapCores } from '../../fixes/leads.ts';
import { cablesAt, findCable, portName, portOfRef } from '../../station/parts.ts';
import { loadVolts, unitOfPart } from '../../trial/parts.ts';
import { feedersOf } from '../../trial/power/feeders.ts';
import { defineRule, fixed } from '../rule.ts';

export const reversedPolarity = defineRule({
  id: 'power/reversed-polarity',
  severity: 'danger',
  title: 'Plus and minus are swapped',
  compares: 'the sign of the voltage on a DC input against its contacts',
  why: 'A unit without protection is destroyed at the moment of plugging in; its metal case then carries plus, and every screen that leads to another unit becomes a short.',
  advice: 'Measure the plug before it meets the unit, and swap the two cores at one end of the cable.',
  source: 'common practice: half a volt the wrong way round is no drop in a lead',
  follows: [],
  messages: {
    reversed:
      '{cable} is the wrong way round for {port}: pulled out, its plug reads {volts V} where {minV V} to {maxV V} belongs, and the unit has no protection.',
    protected:
      '{cable} is the wrong way round for {port}: pulled out, its plug reads {volts V}; the unit is protected but stays dead.',
  },
  looksAt: {
    load({ index, part }, { station, hookup, trial }, report) {
      const plug = trial.plugVolts.get(index);
      const volts = plug?.volts ?? loadVolts(trial.atFirst, part);
      if (volts > -0.5) return;
      const unit = unitOfPart(part);
      const port = portOfRef(part.spec.plus);
      const cable = plug ? findCable(station, plug.cable) : cablesAt(station, hookup, unit, port)[0];
      if (!cable) return;
      const { reverseProtected, minV, maxV } = part.spec;
      report({
        message: reverseProtected ? 'protected' : 'reversed',
        severity: reverseProtected ? 'fault' : 'danger',
        at: [{ unit, port }, { cable: cable.id }],
        values: { cable: cable.number, port: portName(station, { unit, port }), volts, minV, maxV },
        moment: 'receive',
        touches: feedersOf(trial.circuit, trial.receive.on, part.minus).map((s) => `supply:${unitOfPart(s.part)}`),
        ...fixed(swapCores(station, cable)),
      });
    },
  },
});
