import type { QuantityKind, UnitElement, UnitKind } from '../../../../core/index.ts';

/** One figure of an element that the user may replace by their own. */
export interface ElementFigure {
  /** `elementId.field`, as the document keeps the user's own figures. */
  readonly key: string;
  readonly label: string;
  readonly kind: FigureKind;
  readonly value: number;
}

/** A plain number, or a share that is written in per cent, has no unit of its own. */
type FigureKind = Exclude<QuantityKind, 'number'> | 'plain' | 'share';

type Field = readonly [field: string, label: string, kind: FigureKind];

/** By type, the figures that are asked for, in their order. */
export const figureFields: Record<UnitElement['type'], readonly Field[]> = {
  conductor: [
    ['fuseAmps', 'Fuse', 'A'],
    ['ohms', 'Resistance', 'ohm'],
  ],
  supply: [
    ['volts', 'Voltage', 'V'],
    ['maxVolts', 'Highest it can be', 'V'],
    ['amps', 'Continuous', 'A'],
    ['peakAmps', 'Peak', 'A'],
    ['sourceOhms', 'Source', 'ohm'],
  ],
  battery: [
    ['ampHours', 'Capacity, Ah', 'plain'],
    ['charge', 'Charge', 'share'],
    ['maxVolts', 'Highest on charge', 'V'],
    ['cutOffV', 'Cut off at', 'V'],
    ['amps', 'Continuous', 'A'],
    ['peakAmps', 'Peak', 'A'],
    ['sourceOhms', 'Source', 'ohm'],
  ],
  diode: [
    ['volts', 'Drop', 'V'],
    ['atAmps', 'At', 'A'],
    ['maxAmps', 'Stands', 'A'],
  ],
  converter: [
    ['minV', 'Works from', 'V'],
    ['maxV', 'Works up to', 'V'],
    ['absMaxV', 'Stands up to', 'V'],
    ['outVolts', 'Gives', 'V'],
    ['outAmps', 'Up to', 'A'],
    ['efficiency', 'Efficiency', 'share'],
    ['idleWatts', 'Idle', 'W'],
  ],
  load: [
    ['minV', 'Works from', 'V'],
    ['maxV', 'Works up to', 'V'],
    ['absMaxV', 'Stands up to', 'V'],
    ['absMinV', 'Stands down to', 'V'],
    ['dropOutV', 'Off below', 'V'],
  ],
  pullUp: [
    ['volts', 'Voltage', 'V'],
    ['ohms', 'Through', 'ohm'],
  ],
  contactPair: [
    ['onOhms', 'Closed', 'ohm'],
    ['maxVolts', 'Stands', 'V'],
    ['maxAmps', 'Switches', 'A'],
  ],
  rfPath: [
    ['lossDb', 'Loss', 'dB'],
    ['isolationDb', 'Isolation', 'dB'],
    ['saturationDbm', 'Most it gives', 'dBm'],
    ['maxWatts', 'Stands', 'W'],
  ],
  rfSource: [
    ['dbm', 'Power', 'dBm'],
    ['maxDbm', 'Most it can make', 'dBm'],
    ['harmonicsDbc', 'Harmonics', 'dB'],
  ],
  rfLoad: [
    ['ohms', 'Resistance', 'ohm'],
    ['watts', 'Stands', 'W'],
    ['shortWatts', 'For a short time', 'W'],
    ['damageDbm', 'Damaged from', 'dBm'],
    ['overloadDbm', 'Overloaded from', 'dBm'],
    ['gainDbi', 'Gain', 'dB'],
  ],
  matcher: [
    ['minOhms', 'Matches from', 'ohm'],
    ['maxOhms', 'Matches up to', 'ohm'],
    ['lossDb', 'Loss', 'dB'],
    ['maxWatts', 'Stands', 'W'],
  ],
  audioSource: [
    ['volts', 'Level', 'V'],
    ['ohms', 'Source', 'ohm'],
    ['leastOhms', 'Drives at least', 'ohm'],
    ['maxDcVolts', 'Stands, DC', 'V'],
  ],
  audioLoad: [
    ['ohms', 'Resistance', 'ohm'],
    ['fullVolts', 'Made for', 'V'],
    ['overloadVolts', 'Distorts from', 'V'],
    ['watts', 'Stands', 'W'],
    ['maxDcVolts', 'Stands, DC', 'V'],
  ],
  dataEnd: [['standsV', 'Stands', 'V']],
};

const drawKinds = { current: 'A', power: 'W', resistance: 'ohm' } as const;

/** The figures of an element in the order in which they are asked for; only those that it has. */
export function figuresOf(kind: UnitKind, element: UnitElement): ElementFigure[] {
  const values = element as unknown as Record<string, unknown>;
  const own = figureFields[element.type].flatMap(([field, label, quantity]): ElementFigure[] => {
    const value = values[field];
    return typeof value === 'number' ? [{ key: `${element.id}.${field}`, label, kind: quantity, value }] : [];
  });
  if (element.type !== 'load') return own;
  const quantity = drawKinds[element.law];
  const states = (element.states ?? []).map((state, i): ElementFigure => {
    const on = state.when.on?.map((id) => kind.actors?.find((a) => a.id === id)?.label ?? id).join(', ');
    const label = on ? `Draws, ${lower(on)} on` : 'Draws otherwise';
    return { key: `${element.id}.states.${i}.amount`, label, kind: quantity, value: state.amount };
  });
  return [{ key: `${element.id}.amount`, label: 'Draws', kind: quantity, value: element.amount }, ...states, ...own];
}

const lower = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** What a unit's parts are called. */
export const elementTitles: Record<UnitElement['type'], string> = {
  conductor: 'Inside connection',
  supply: 'Gives power',
  battery: 'Battery',
  diode: 'Diode',
  converter: 'Converts',
  load: 'Takes power',
  pullUp: 'Pull-up',
  contactPair: 'Contact',
  rfPath: 'RF path',
  rfSource: 'Makes RF',
  rfLoad: 'Ends RF',
  matcher: 'Matches',
  audioSource: 'Gives audio',
  audioLoad: 'Takes audio',
  dataEnd: 'Data',
};

/** `RF path, antenna – receiver`: what an element is and at which ports. */
export function elementTitle(kind: UnitKind, element: UnitElement): string {
  const title = element.type === 'conductor' && element.fuseAmps !== undefined ? 'Fuse' : elementTitles[element.type];
  const labels = [...new Set(portsOf(element).map((id) => labelOf(kind, id)))].filter(Boolean);
  return labels.length > 0 ? `${title}, ${labels.join(' – ')}` : title;
}

const labelOf = (kind: UnitKind, id: string): string => kind.ports.find((p) => p.id === id)?.label ?? '';

function portsOf(element: UnitElement): string[] {
  const refs = Object.entries(element).flatMap(([field, value]) =>
    ['from', 'to', 'plus', 'outPlus', 'anode', 'cathode', 'contact'].includes(field) && typeof value === 'string'
      ? [value.split('.')[0] ?? '']
      : [],
  );
  if (element.type === 'rfPath' || element.type === 'matcher') return [element.a, element.b];
  return element.type === 'rfSource' || element.type === 'rfLoad' ? [element.port] : refs;
}
