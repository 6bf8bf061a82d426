import { cableKinds } from '../../../core/catalog/cables/cable-kinds.ts';
import { impedanceMismatch } from '../../../core/rules/rf/impedance-mismatch.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const kinds = Object.fromEntries(cableKinds.map(({ id, kind }) => [id, kind]));

/** A transmitter on its load through so many metres of a coax, at 14.06 MHz. */
function through(kind: string, lengthM: number): Station {
  const station = drawStation({
    units: { supply: 'bench-supply', tx: 'cw-transmitter-3w', key: 'straight-key', load: 'dummy-load-5w' },
    cables: ['supply.out > tx.power', 'key.out > tx.key', ['tx.antenna > load.input', { lengthM }]],
  });
  const cables = station.cables.map((c) => (c.number === 'R1' ? { ...c, kind } : c));
  return { ...station, cables, cableKinds: { ...station.cableKinds, [kind]: kinds[kind] as never } };
}
const receiving = (): Station => {
  const station = drawStation({
    units: { rx: 'receiver-without-mute', aerial: 'wire-antenna' },
    cables: [['aerial.feed > rx.antenna', { lengthM: 20 }]],
  });
  return {
    ...station,
    cables: station.cables.map((c) => ({ ...c, kind: 'coax-rg-6' })),
    cableKinds: { ...station.cableKinds, 'coax-rg-6': kinds['coax-rg-6'] as never },
  };
};

testRule(impedanceMismatch, {
  silent: [
    { name: '20 m of 50 Ω cable', station: through('coax-rg-58', 20) },
    // A twentieth of a wavelength at 14.06 MHz and 0.82 of the speed of light is 0.87 m.
    { name: '0.6 m of 75 Ω cable', station: through('coax-rg-6', 0.6) },
    { name: '75 Ω cable to a receiver alone', station: receiving() },
  ],
  reported: [
    {
      name: '10 m of 75 Ω cable',
      station: through('coax-rg-6', 10),
      message: 'other',
      severity: 'doubt',
      at: { cable: 'r1' },
      // (75/50)² = 2.25.
      values: { ohms: 75, swr: '2.25', transmitter: 'tx' },
    },
  ],
});
