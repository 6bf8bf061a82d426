import { describe, expect, it } from 'vitest';
import type { Station } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { powerUpSheet } from './power-up-sheet.ts';
import { stepsToRead } from './read-steps.ts';

const fused = (amps: number) => ({ fuse: { amps, family: 'blade', atM: 0.1 } as const });

/** A 22 A radio on a supply, and something small beside it. */
const desk = drawStation({
  units: {
    supply: 'switch-mode-supply',
    rig: 'transceiver-100w',
    small: 'buck-converter-5v',
    meter: 'swr-meter-200w',
    load: 'dummy-load-100w',
  },
  cables: [
    ['supply.out > rig.power', { kind: 'lead-awg-10', lengthM: 2, ...fused(25) }],
    ['supply.out > small.input', fused(5)],
    'rig.antenna > meter.transmitter',
    'meter.antenna > load.input',
  ],
});

const dropsOf = (station: Station) => stepsToRead(station).filter(({ id }) => id.includes('/drop/'));

describe('the drops under load', () => {
  const drops = dropsOf(desk);

  it('are read on both sides of a lead that carries 22 A, and on none that carries two', () =>
    expect(drops.map(({ at }) => at)).toEqual([[{ cable: 'd1' }], [{ cable: 'd1' }]]));

  it('are what the wire makes: 2 m of AWG 10 at 22 A, and its plugs', () => {
    // NBS Handbook 100: 0.9989 Ω per 1000 ft of AWG 10, 3.277 mΩ/m.
    const wire = 22 * 2 * (0.9989 / 304.8);
    const minus = drops[1]?.expected.value ?? 0;
    expect(minus).toBeGreaterThan(wire);
    // Two screwed or crimped contacts have about a milliohm each (common practice).
    expect(minus).toBeLessThan(wire + 22 * 0.004);
  });

  it('a joint of 50 milliohm is off at either', () => {
    for (const { expected } of drops) {
      expect(expected.from).toBe(0);
      expect(expected.to).not.toBeNull();
      expect((expected.value ?? 0) + 22 * 0.05).toBeGreaterThan(expected.to ?? 0);
    }
  });

  it('say where the tips go, and what a reading that is over accuses', () =>
    expect(drops[0]?.text).toMatch(
      /^Drop on the plus side of D1 with its plugs, its fuse and the holder, .* held: red tip on plus of supply · output, black on plus of rig · power\. More is a bad joint in there/,
    ));

  it('go box by box through a strip', () => {
    const strip = drawStation({
      units: {
        supply: 'switch-mode-supply',
        strip: { kind: 'fused-strip', overrides: { 'fuse-one.fuseAmps': 15 } },
        rig: { kind: 'transceiver-100w', overrides: { 'draw.states.0.amount': 11 } },
        load: 'dummy-load-100w',
      },
      cables: [
        ['supply.out > strip.input', { kind: 'lead-awg-10', ...fused(20) }],
        ['strip.one > rig.power', { kind: 'lead-awg-12' }],
        'rig.antenna > load.input',
      ],
    });
    const names = dropsOf(strip).map(({ text }) => /side of (.*?)( with|,)/.exec(text)?.[1]);
    expect(names).toEqual(['D1', 'strip', 'D2', 'D2', 'strip', 'D1']);
  });

  it('are none where nothing draws more than 5 A', () => {
    const small = drawStation({
      units: { supply: 'bench-supply', tx: 'cw-transmitter-3w', key: 'straight-key', load: 'dummy-load-5w' },
      cables: ['supply.out > tx.power', 'key.out > tx.key', 'tx.antenna > load.input'],
    });
    expect(powerUpSheet(small).parts.length).toBeGreaterThan(0);
    expect(dropsOf(small)).toEqual([]);
  });
});
