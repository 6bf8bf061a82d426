import type { RfLoad } from '../../circuit/circuit.ts';
import { muteCable } from '../../fixes/hookups.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { cablesAt, portName, unitName } from '../../station/parts.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import { portAt } from '../../trial/contact-at.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { ownedBy } from '../../trial/owned-by.ts';
import { assumedDamageDbm, assumedOverloadDbm, audibleDb, isMuted } from '../../trial/rf/rf-ways.ts';
import { defineRule, fixed } from '../rule.ts';

export const noMute = defineRule({
  id: 'keying/no-mute',
  severity: 'fault',
  title: 'The receiver is not muted while the station sends',
  compares: 'each receiver’s mute in sending, and the level that reaches its input then',
  why: 'Your own signal roars in the phones, and a receiver that is driven hard takes its time to come back.',
  advice: 'Lay the mute line from the changeover (or the sequencer) to the receiver’s mute jack.',
  source: 'the receiver’s own overload level; without one, −10 dBm (assumed)',
  follows: ['keying/mute-inverted'],
  messages: {
    open: '{receiver} stays open while {transmitter} sends, and {level dBm} reaches it: nothing is plugged into {mute}.',
    unmuted:
      '{receiver} stays open while {transmitter} sends, and {level dBm} reaches it: what is plugged into {mute} does not mute it.',
    noInput: '{receiver} stays open while {transmitter} sends, and {level dBm} reaches it; it has no mute input.',
  },
  looksAt: {
    region({ number, receivers }, { station, hookup, trial }, report) {
      for (const { reach, receiver } of sendingsAt(trial, number, receivers)) {
        const level = reach.rf.levelAt(receiver.port);
        const source = level && trial.circuit.rf.sources[level.field.source];
        if (!level || !source || source.unit === receiver.unit || isMuted(trial, reach, receiver.unit)) continue;
        const overload = receiver.spec.overloadDbm ?? assumedOverloadDbm;
        // What burns a receiver no mute keeps from it: another rule's business.
        if (level.dbm < overload - audibleDb || level.dbm > (receiver.spec.damageDbm ?? assumedDamageDbm)) continue;
        const mute = mutePort(trial, receiver.unit);
        const plugged = mute !== null && cablesAt(station, hookup, receiver.unit, mute).length > 0;
        report({
          message: mute === null ? 'noInput' : plugged ? 'unmuted' : 'open',
          severity: level.dbm > overload ? 'fault' : 'doubt',
          at: [{ unit: receiver.unit, ...(mute !== null && { port: mute }) }],
          values: {
            receiver: unitName(station, receiver.unit),
            transmitter: unitName(station, source.unit),
            level: level.dbm,
            mute: mute === null ? '' : portName(station, { unit: receiver.unit, port: mute }),
          },
          moment: 'sending',
          weight: level.dbm,
          ...(mute !== null && !plugged ? fixed(layMute(station, trial, { unit: receiver.unit, port: mute })) : {}),
        });
      }
    },
  },
});

/** The cable gets a number that no other has. */
function layMute(station: Station, trial: Trial, mute: PortRef) {
  trial.circuit.reads.noteList('numbers');
  return muteCable(station, mute);
}

function sendingsAt(trial: Trial, region: number, receivers: readonly RfLoad[]) {
  const sendings = instantsOfRegion(trial, region).filter(({ name }) => name === 'sending');
  return sendings.flatMap(({ reach }) => receivers.map((receiver) => ({ reach, receiver })));
}

/** The port at which a receiver feels that it has to be silent, or null. */
function mutePort(trial: Trial, unit: string): string | null {
  const actor = ownedBy(trial.circuit, unit).actors.find((a) => a.does === 'mutes');
  const feel = actor?.feels.find((f) => f.type === 'voltageBelow' || f.type === 'voltageAbove');
  if (feel?.type !== 'voltageBelow' && feel?.type !== 'voltageAbove') return null;
  // A joint inside the box, or its chassis, is in no port: nothing can be plugged in there.
  return portAt(trial.circuit, feel.node)?.port ?? null;
}
