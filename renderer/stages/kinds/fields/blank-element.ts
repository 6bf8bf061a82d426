import type { UnitElement, UnitKind, WholeKind } from '../../../../core/index.ts';
import { contactChoices } from './contact-choices.ts';

type Blank = UnitElement extends infer E ? (E extends { id: string } ? Omit<E, 'id'> : never) : never;

/** An element of a type to begin with, between the first contacts that there are, under an id that is free. */
export function blankElement(whole: WholeKind, type: UnitElement['type']): UnitElement {
  const choices = contactChoices(whole);
  const first = choices[0]?.id ?? 'chassis';
  const second = choices[1]?.id ?? 'chassis';
  const rf = whole.kind.ports.filter((p) => p.class === 'rf');
  const a = (rf[0] ?? whole.kind.ports[0])?.id ?? 'port';
  const b = (rf[1] ?? whole.kind.ports[1])?.id ?? 'port';
  const blanks: Record<UnitElement['type'], Blank> = {
    load: {
      type: 'load',
      plus: first,
      minus: second,
      law: 'current',
      amount: 0.1,
      minV: 11,
      maxV: 15,
      absMaxV: 16,
      reverseProtected: false,
    },
    supply: {
      type: 'supply',
      plus: first,
      minus: second,
      volts: 13.8,
      sourceOhms: 0.02,
      amps: 1,
      peakAmps: 1,
      beyond: 'limits',
    },
    battery: {
      type: 'battery',
      plus: first,
      minus: second,
      chemistry: 'leadAcid',
      ampHours: 7,
      charge: 1,
      sourceOhms: 0.03,
      maxVolts: 14.4,
      cutOffV: 11.8,
      amps: 2,
      peakAmps: 10,
      beyond: 'sags',
    },
    conductor: { type: 'conductor', from: first, to: second, ohms: 0.005 },
    contactPair: {
      type: 'contactPair',
      from: first,
      to: second,
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 50,
      maxAmps: 0.5,
    },
    pullUp: { type: 'pullUp', contact: first, volts: 5, ohms: 10_000 },
    diode: { type: 'diode', anode: first, cathode: second, volts: 0.7, atAmps: 1, ohms: 0.02 },
    converter: {
      type: 'converter',
      plus: first,
      minus: second,
      outPlus: choices[2]?.id ?? 'chassis',
      outMinus: choices[3]?.id ?? 'chassis',
      minV: 10,
      maxV: 15,
      absMaxV: 16,
      outVolts: 5,
      outOhms: 0.05,
      outAmps: 1,
      efficiency: 0.85,
      idleWatts: 0.1,
    },
    rfSource: { type: 'rfSource', port: a, dbm: 37 },
    rfPath: { type: 'rfPath', a, b, lossDb: 0.1 },
    rfLoad: { type: 'rfLoad', port: a, role: 'termination', ohms: 50 },
    matcher: { type: 'matcher', a, b, lossDb: 0.3, minOhms: 10, maxOhms: 500 },
    audioSource: { type: 'audioSource', contact: first, volts: 0.5, ohms: 10 },
    audioLoad: { type: 'audioLoad', contact: first, ohms: 8 },
    dataEnd: { type: 'dataEnd', contact: first, standard: 'ttl5', role: 'drives' },
  };
  return { ...blanks[type], id: freeId(whole.kind.elements, type) } as UnitElement;
}

/** `load`, then `load-2`: the first id that none of the items has. */
export function freeId(items: readonly Pick<UnitKind['ports'][number], 'id'>[], stem: string): string {
  let id = stem;
  for (let n = 2; items.some((item) => item.id === id); n++) id = `${stem}-${n}`;
  return id;
}
