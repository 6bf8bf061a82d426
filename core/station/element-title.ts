import type { UnitElement } from './schema/unit-element.ts';
import type { UnitKind } from './schema/unit-kind.ts';

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
