import { type Limit, limitOfOwnFigure, type UnitElement, type UnitKind } from '../../../../core/index.ts';

/** One figure of an element that the user may replace by their own. */
export interface ElementFigure {
  /** `elementId.field`, as the document keeps the user's own figures. */
  readonly key: string;
  readonly label: string;
  /** What it can be. */
  readonly limit: Limit;
  readonly value: number;
}

type Field = readonly [field: string, label: string];

/** By type, the figures that are asked for, in their order. */
export const figureFields: Record<UnitElement['type'], readonly Field[]> = {
  conductor: [
    ['fuseAmps', 'Fuse'],
    ['ohms', 'Resistance'],
  ],
  supply: [
    ['volts', 'Voltage'],
    ['maxVolts', 'Highest it can be'],
    ['amps', 'Continuous'],
    ['peakAmps', 'Peak'],
    ['sourceOhms', 'Source'],
  ],
  battery: [
    ['ampHours', 'Capacity, Ah'],
    ['charge', 'Charge'],
    ['maxVolts', 'Highest on charge'],
    ['cutOffV', 'Cut off at'],
    ['amps', 'Continuous'],
    ['peakAmps', 'Peak'],
    ['sourceOhms', 'Source'],
  ],
  diode: [
    ['volts', 'Drop'],
    ['atAmps', 'At'],
    ['maxAmps', 'Stands'],
  ],
  converter: [
    ['minV', 'Works from'],
    ['maxV', 'Works up to'],
    ['absMaxV', 'Stands up to'],
    ['outVolts', 'Gives'],
    ['outAmps', 'Up to'],
    ['efficiency', 'Efficiency'],
    ['idleWatts', 'Idle'],
  ],
  load: [
    ['minV', 'Works from'],
    ['maxV', 'Works up to'],
    ['absMaxV', 'Stands up to'],
    ['absMinV', 'Stands down to'],
    ['dropOutV', 'Off below'],
  ],
  pullUp: [
    ['volts', 'Voltage'],
    ['ohms', 'Through'],
  ],
  contactPair: [
    ['onOhms', 'Closed'],
    ['maxVolts', 'Stands'],
    ['maxAmps', 'Switches'],
  ],
  rfPath: [
    ['lossDb', 'Loss'],
    ['isolationDb', 'Isolation'],
    ['saturationDbm', 'Most it gives'],
    ['maxWatts', 'Stands'],
  ],
  rfSource: [
    ['dbm', 'Power'],
    ['maxDbm', 'Most it can make'],
    ['minDbm', 'Turns down to'],
    ['harmonicsDbc', 'Harmonics'],
  ],
  rfLoad: [
    ['ohms', 'Resistance'],
    ['watts', 'Stands'],
    ['shortWatts', 'For a short time'],
    ['damageDbm', 'Damaged from'],
    ['overloadDbm', 'Overloaded from'],
    ['gainDbi', 'Gain'],
  ],
  matcher: [
    ['minOhms', 'Matches from'],
    ['maxOhms', 'Matches up to'],
    ['lossDb', 'Loss'],
    ['maxWatts', 'Stands'],
  ],
  audioSource: [
    ['volts', 'Level'],
    ['ohms', 'Source'],
    ['leastOhms', 'Drives at least'],
    ['maxDcVolts', 'Stands, DC'],
  ],
  audioLoad: [
    ['ohms', 'Resistance'],
    ['fullVolts', 'Made for'],
    ['overloadVolts', 'Distorts from'],
    ['watts', 'Stands'],
    ['maxDcVolts', 'Stands, DC'],
  ],
  dataEnd: [['standsV', 'Stands']],
};

const drawUnits = { current: 'A', power: 'W', resistance: 'ohm' } as const;

/** The figures of an element in the order in which they are asked for; only those that it has. */
export function elementFigures(kind: UnitKind, element: UnitElement): ElementFigure[] {
  const values = element as unknown as Record<string, unknown>;
  const figure = (path: string, label: string, value: unknown): ElementFigure[] => {
    const key = `${element.id}.${path}`;
    const limit = limitOfOwnFigure(kind, key);
    return typeof value === 'number' && limit ? [{ key, label, limit, value }] : [];
  };
  const own = figureFields[element.type].flatMap(([field, label]) => figure(field, label, values[field]));
  if (element.type !== 'load') return own;
  const unit = drawUnits[element.law];
  const states = (element.states ?? []).flatMap((state, i) => {
    const on = state.when.on?.map((id) => kind.actors?.find((a) => a.id === id)?.label ?? id).join(', ');
    const label = on ? `Draws, ${lower(on)} on` : 'Draws otherwise';
    return figure(`states.${i}.amount`, label, state.amount);
  });
  const draws = [...figure('amount', 'Draws', element.amount), ...states];
  return [...draws.map((draw) => ({ ...draw, limit: { ...draw.limit, unit } })), ...own];
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
