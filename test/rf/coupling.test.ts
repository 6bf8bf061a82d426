import { describe, expect, it } from 'vitest';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import { drawStation } from '../stations/draw.ts';

/** 100 W into one dipole, a receiver on another; so many decibels between the two. */
function twoAntennas(lossDb: number | null): Station {
  const station = drawStation({
    units: {
      supply: 'switch-mode-supply',
      rig: { kind: 'transceiver-100w' },
      one: { kind: 'dipole', overrides: { 'wire.ohms': 50, 'wire.reactance': 0 } },
      two: 'dipole',
      receiver: 'receiver-without-mute',
    },
    cables: [
      ['supply.out > rig.power', { kind: 'lead-awg-10', fuse: { amps: 25, family: 'blade', atM: 0.1 } }],
      ['rig.antenna > one.feed', { lengthM: 0 }],
      ['two.feed > receiver.antenna', { lengthM: 0 }],
    ],
    plan: { frequencyHz: 14_060_000 },
  });
  if (lossDb === null) return station;
  const ends = { a: { unit: 'one', port: 'feed' }, b: { unit: 'two', port: 'feed' } };
  return { ...station, couplings: [{ ...ends, lossDb }] };
}

const levelFindings = (station: Station) =>
  survey(station).findings.filter((f) => f.rule === 'rf/transmit-into-receiver' && f.at[0] && 'unit' in f.at[0]);

describe('antennas that hear each other', () => {
  it('+50 dBm less 20 dB arrive as +30 dBm at the receiver on the other antenna', () => {
    const [finding] = levelFindings(twoAntennas(20));
    expect(finding?.severity).toBe('danger');
    expect(finding?.values.level).toBeCloseTo(30, 6);
  });
  it('with 80 dB between them nothing is hurt', () => expect(levelFindings(twoAntennas(80))).toEqual([]));
  it('the air is no way that anyone selected: the power still ends in the first antenna', () => {
    const [rf] = surveyReport(twoAntennas(20)).rf;
    expect(rf?.ends.map((e) => e.name)).toEqual(['one']);
    expect(rf?.ends[0]?.watts).toBeCloseTo(surveyReport(twoAntennas(null)).rf[0]?.ends[0]?.watts ?? 0, 9);
  });
  it('is written and read back as it was', () => {
    const station = twoAntennas(33.5);
    const read = readStation(writeStation(station));
    expect('station' in read && read.station.couplings).toEqual(station.couplings);
  });
  it('between ports that are not there it is refused with its place', () => {
    const station = twoAntennas(20);
    const couplings = [{ a: { unit: 'one', port: 'feed' }, b: { unit: 'rig', port: 'power' }, lossDb: 20 }];
    const read = readStation(JSON.stringify({ ...station, couplings }));
    const problems = 'problems' in read ? read.problems : [];
    expect(problems).toEqual([{ place: 'couplings[0].b', message: 'There is no RF port “rig · power”.' }]);
  });
});
