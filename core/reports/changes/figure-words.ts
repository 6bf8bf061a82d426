import { formatAmps, formatOhms, formatRating, formatVolts, formatWatts } from '../../quantity/format.ts';
import type { UnitKind } from '../../station/schema/unit-kind.ts';

/** Units at the end of a figure's name, and how they are written; the longer ones first. */
const endings: readonly (readonly [ending: string, write: (value: number) => string])[] = [
  ['fuseAmps', formatRating],
  ['Amps', formatAmps],
  ['Volts', formatVolts],
  ['Ohms', formatOhms],
  ['Watts', formatWatts],
  ['Dbm', (value) => `${value} dBm`],
  ['Dbc', (value) => `${value} dBc`],
  ['Dbi', (value) => `${value} dBi`],
  ['Db', (value) => `${value} dB`],
  ['V', formatVolts],
];

/** A figure that stands for itself: `amps`, `volts`. */
const whole: Readonly<Record<string, (value: number) => string>> = {
  amps: formatRating,
  volts: formatVolts,
  ohms: formatOhms,
  watts: formatWatts,
  dbm: (value) => `${value} dBm`,
};

/** Where in a unit the figure `element.field` is (the label of a port, or nothing) and what it is called. */
export function figureName(kind: UnitKind, key: string): { readonly port: string; readonly label: string } {
  const [id = '', ...path] = key.split('.');
  const element = kind.elements.find((e) => e.id === id);
  const named = Object.values(element ?? {}).flatMap((value) =>
    typeof value === 'string' ? kind.ports.filter((p) => value === p.id || value.startsWith(`${p.id}.`)) : [],
  );
  // Of a way from port to port the far one tells it from its neighbours.
  const port = named.at(-1)?.label ?? '';
  const field = path.filter((part) => !/^\d+$/.test(part)).join(' ');
  const ending = endings.find(([end]) => field.endsWith(end))?.[0];
  const bare = ending === undefined ? field : field === 'fuseAmps' ? 'fuse' : field.slice(0, -ending.length);
  return { port, label: `${element && !port ? `${id} ` : ''}${words(bare || field)}` };
}

/** `maxDc` as words: `max dc`. */
const words = (name: string): string => name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/** The figure as it is in this kind, with its unit; `none` where it has no such figure. */
export function figureText(kind: UnitKind, key: string): string {
  const [id = '', ...path] = key.split('.');
  const element: unknown = kind.elements.find((e) => e.id === id);
  const value = path.reduce<unknown>((at, part) => (at as Record<string, unknown> | undefined)?.[part], element);
  if (typeof value !== 'number') return 'none';
  const field = path.at(-1) ?? '';
  const write = whole[field] ?? endings.find(([end]) => field.endsWith(end))?.[1] ?? String;
  return write(value);
}
