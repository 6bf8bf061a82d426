import { describe, expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import { inputsOfUnit, outputsOfUnit } from '../../core/trial/audio-ends.ts';
import { jointsAt, partsOfCable, partsOfUnit } from '../../core/trial/own-parts.ts';
import { ownedBy } from '../../core/trial/owned-by.ts';
import { sample, sampleNames } from '../stations/samples.ts';

describe('what a unit or a cable brings into a circuit', () => {
  it.each(sampleNames)('is each thing of the circuit once: %s', (name) => {
    const station = sample(name);
    const circuit = buildCircuit(station);
    const [units, cables] = [station.units.map((u) => u.id), station.cables.map((c) => c.id)];
    const parts = [
      ...units.flatMap((id) => partsOfUnit(circuit, id)),
      ...cables.flatMap((id) => partsOfCable(circuit, id)),
    ];
    expect(parts.map(({ part }) => part)).toEqual(circuit.parts);
    expect(parts.every(({ index, part }) => circuit.parts[index] === part)).toBe(true);
    expect(units.flatMap((id) => ownedBy(circuit, id).rfSources)).toEqual(circuit.rf.sources);
    expect(units.flatMap((id) => outputsOfUnit(circuit, id)).map(({ end }) => end)).toEqual(circuit.signals.sources);
    expect(units.flatMap((id) => inputsOfUnit(circuit, id)).map(({ end }) => end)).toEqual(circuit.signals.loads);
    const joints = units.flatMap((id) => jointsAt(circuit, station.cables, id)).map(({ index }) => index);
    const mates = circuit.parts.flatMap(({ origin }, index) => (origin.type === 'mate' ? [index] : []));
    expect(joints.sort((a, b) => a - b)).toEqual(mates);
  });
});
