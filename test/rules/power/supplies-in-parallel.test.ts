import { suppliesInParallel } from '../../../core/rules/power/supplies-in-parallel.ts';
import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const battery = (chemistry: 'leadAcid' | 'agm' | 'lifepo4', ampHours: number, maxVolts = 14.7) =>
  made(
    { out: ['dc', 'stud-pair'] },
    [
      {
        id: 'cells',
        type: 'battery',
        plus: 'out.plus',
        minus: 'out.minus',
        chemistry,
        ampHours,
        charge: 1,
        sourceOhms: 0.01,
        maxVolts,
        cutOffV: 10.5,
        amps: 30,
        peakAmps: 500,
        beyond: 'sags',
      },
    ],
    { isolated: 'all' },
  );

/** Three pairs of studs in parallel; with diodes in two of the plus legs where asked for. */
const bus = (diodes: boolean) => {
  const legs = ['one', 'two'];
  const joint = (leg: string): UnitElement =>
    diodes
      ? {
          id: `d-${leg}`,
          type: 'diode',
          anode: `${leg}.plus`,
          cathode: 'out.plus',
          volts: 0.4,
          atAmps: 10,
          ohms: 0.005,
        }
      : { id: `w-${leg}`, type: 'conductor', from: `${leg}.plus`, to: 'out.plus', ohms: 0.001 };
  return made(
    { one: ['dc', 'stud-pair'], two: ['dc', 'stud-pair'], out: ['dc', 'stud-pair'] },
    [
      ...legs.map(joint),
      ...legs.map(
        (leg): UnitElement => ({
          id: `m-${leg}`,
          type: 'conductor',
          from: `${leg}.minus`,
          to: 'out.minus',
          ohms: 0.001,
        }),
      ),
    ],
    { isolated: 'all' },
  );
};

const onBus = (one: Parameters<typeof drawStation>[0]['units'][string], two: typeof one, diodes = false) =>
  drawStation({
    units: { one, two, bus: { made: bus(diodes) } },
    cables: ['one.out > bus.one', 'two.out > bus.two'],
  });
const bench = (volts: number) => ({ kind: 'bench-supply', overrides: { 'output.volts': volts } });

testRule(suppliesInParallel, {
  silent: [
    { name: 'two supplies through diodes', station: onBus(bench(13.8), bench(13.2), true) },
    { name: 'a charger across its battery', station: onBus(bench(13.8), { made: battery('agm', 28) }) },
    {
      name: 'two batteries that are alike',
      station: onBus({ made: battery('lifepo4', 100) }, { made: battery('lifepo4', 100) }),
    },
    {
      name: 'two supplies that share only their minus',
      station: drawStation({
        units: {
          one: bench(13.8),
          two: bench(13.2),
          a: 'cw-transmitter-3w',
          b: 'cw-transmitter-5w',
          tee: 'coax-switch',
        },
        cables: ['one.out > a.power', 'two.out > b.power', 'a.antenna > tee.one', 'b.antenna > tee.two'],
      }),
    },
  ],
  reported: [
    {
      name: 'two regulated supplies, half a volt apart',
      station: onBus(bench(13.8), bench(13.3)),
      message: 'supplies',
      severity: 'danger',
      at: { unit: 'one' },
      values: { volts: 13.8, otherVolts: 13.3 },
    },
    {
      name: 'two supplies set alike',
      station: onBus(bench(13.8), bench(13.8)),
      message: 'supplies',
      severity: 'doubt',
      at: { unit: 'one' },
    },
    {
      name: 'a lead-acid and a lithium battery',
      station: onBus({ made: battery('agm', 100) }, { made: battery('lifepo4', 100) }),
      message: 'batteries',
      severity: 'doubt',
      at: { unit: 'two' },
      values: { what: 'lithium iron phosphate and sealed lead-acid' },
    },
    {
      name: 'an old and a new battery of other sizes',
      station: onBus({ made: battery('agm', 28) }, { made: battery('agm', 40) }),
      message: 'batteries',
      severity: 'doubt',
      at: { unit: 'one' },
      values: { what: '28 Ah and 40 Ah' },
    },
    {
      name: 'a supply above what the battery may be charged with',
      station: onBus({ made: battery('agm', 28, 14.4) }, bench(15)),
      message: 'overcharged',
      severity: 'danger',
      at: { unit: 'two' },
      values: { volts: 15, limit: 14.4 },
    },
  ],
});
