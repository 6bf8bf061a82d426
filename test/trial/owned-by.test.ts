import { expect, it } from 'vitest';
import { buildCircuit } from '../../core/circuit/build-circuit.ts';
import { ownedBy } from '../../core/trial/owned-by.ts';
import { drawStation } from '../stations/draw.ts';

const circuit = buildCircuit(
  drawStation({
    units: { tx: 'cw-transmitter-3w', over: 'changeover-by-line', rx: 'receiver-with-mute', load: 'dummy-load-5w' },
    cables: ['tx.antenna > over.transmitter', 'over.receiver > rx.antenna', 'over.antenna > load.input'],
  }),
);

it('gives each unit what is its own, and every unit’s together are all that there are', () => {
  const units = ['tx', 'over', 'rx', 'load'];
  for (const unit of units) {
    const { actors, rfSources, rfLoads } = ownedBy(circuit, unit);
    for (const thing of [...actors, ...rfSources, ...rfLoads]) expect(thing.unit).toBe(unit);
  }
  const all = units.map((unit) => ownedBy(circuit, unit));
  expect(all.flatMap((own) => own.actors)).toEqual(circuit.actors);
  expect(all.flatMap((own) => own.rfSources)).toEqual(circuit.rf.sources);
  expect(all.flatMap((own) => own.rfLoads)).toEqual(circuit.rf.loads);
});

it('leaves a cable’s ways for RF out', () => {
  const edges = ['tx', 'over', 'rx', 'load'].flatMap((unit) => ownedBy(circuit, unit).rfEdges);
  expect(edges).toEqual(circuit.rf.edges.filter((edge) => edge.origin.type !== 'cable'));
});

it('gives nothing of a unit that is not there', () => {
  expect(ownedBy(circuit, 'nobody')).toEqual({ actors: [], rfSources: [], rfLoads: [], rfEdges: [] });
});
