import { restVolts } from '../../catalog/battery.ts';
import type { ElementOf } from '../../station/schema/unit-kind.ts';
import type { CircuitPart, Gate, LoadPart, Origin, SupplyPart } from '../circuit.ts';

type Source = ElementOf<'supply'> | ElementOf<'battery'> | ElementOf<'converter'> | ElementOf<'diode'>;
type Base = { readonly gate: Gate; readonly origin: Extract<Origin, { type: 'element' }> };

/** Thermal voltage kT/q at 27 °C, in volts. */
const thermalVolts = 0.0258649;

/** What gives or steers current in a circuit: a supply, a battery, the two halves of a converter, a diode. */
export function sourceParts(element: Source, node: (ref: string) => number, base: Base): CircuitPart[] {
  switch (element.type) {
    case 'supply':
      return [
        { kind: 'supply', plus: node(element.plus), minus: node(element.minus), spec: element, sinks: false, ...base },
      ];
    case 'battery':
      return [batteryPart(element, node, base)];
    case 'converter':
      return converterParts(element, node, base);
    case 'diode': {
      const slopeVolts = (element.emission ?? 1) * thermalVolts;
      // From the drop that is stated: what is left for the junction, and the saturation current that fits.
      const junction = Math.max(element.volts - element.atAmps * element.ohms, slopeVolts);
      const saturationAmps = element.atAmps / Math.expm1(junction / slopeVolts);
      const ends = { anode: node(element.anode), cathode: node(element.cathode) };
      return [{ kind: 'diode', ...ends, saturationAmps, slopeVolts, ohms: element.ohms, ...base }];
    }
  }
}

function batteryPart(battery: ElementOf<'battery'>, node: (ref: string) => number, base: Base): SupplyPart {
  const { id, plus, minus, sourceOhms, amps, peakAmps, beyond, maxVolts } = battery;
  const volts = restVolts(battery.chemistry, battery.charge);
  const spec = { id, type: 'supply', plus, minus, volts, maxVolts, sourceOhms, amps, peakAmps, beyond } as const;
  return { kind: 'supply', plus: node(plus), minus: node(minus), spec, sinks: true, battery, ...base };
}

function converterParts(
  element: ElementOf<'converter'>,
  node: (ref: string) => number,
  base: Base,
): [LoadPart, SupplyPart] {
  const { id, plus, minus, outPlus, outMinus, minV, maxV, absMaxV, idleWatts } = element;
  const converter = { name: `${base.origin.unit}.${id}`, efficiency: element.efficiency, idleWatts };
  const load = {
    id,
    type: 'load',
    plus,
    minus,
    law: 'power',
    amount: idleWatts,
    minV,
    maxV,
    absMaxV,
    reverseProtected: false,
    dropOutV: minV,
  } as const;
  const supply = {
    id,
    type: 'supply',
    plus: outPlus,
    minus: outMinus,
    volts: element.outVolts,
    sourceOhms: element.outOhms,
    amps: element.outAmps,
    peakAmps: element.outAmps * 1.1,
    beyond: 'limits',
  } as const;
  return [
    { kind: 'load', plus: node(plus), minus: node(minus), spec: load, states: [], dropOutV: minV, converter, ...base },
    { kind: 'supply', plus: node(outPlus), minus: node(outMinus), spec: supply, sinks: false, converter, ...base },
  ];
}
