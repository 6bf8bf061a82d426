import { expect, it } from 'vitest';
import type { Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';
import { sample } from '../../stations/samples.ts';

it.each(['@joint', 'chassis'])('a receiver that is muted from %s, within its box, has no mute input', (contact) => {
  const station: Station = structuredClone(sample('hut-amplifier'));
  for (const actor of station.kinds['receiver-with-mute']?.actors ?? [])
    if (actor.does === 'mutes') actor.feels = { type: 'voltageBelow', contact, volts: -100 };
  const found = survey(station).findings.filter((f) => f.rule === 'keying/no-mute');
  expect(found.map((f) => f.message).join()).toMatch(/it has no mute input/);
});
