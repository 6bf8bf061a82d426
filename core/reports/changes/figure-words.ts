import { formatAmps, formatHertz, formatOhms, formatRating, formatVolts, formatWatts } from '../../quantity/format.ts';
import type { Limit } from '../../quantity/limits.ts';
import { lowerFirst } from '../../quantity/lower-first.ts';
import { elementFigures } from '../../station/element-figures.ts';
import { decibelUnits, fieldLabel } from '../../station/figure-labels.ts';
import { limitOfOwnFigure } from '../../station/own-figure.ts';
import type { UnitKind } from '../../station/schema/unit-kind.ts';

/** Amperes that are a rating, and are written as one. */
const ratings = ['amps', 'fuseAmps'];

/** Where in a unit the figure `element.field` is (the label of a port, or nothing) and what it is called. */
export function figureName(kind: UnitKind, key: string): { readonly port: string; readonly label: string } {
  const [id = '', ...path] = key.split('.');
  const element = kind.elements.find((e) => e.id === id);
  if (!element) return { port: '', label: path.join(' ') };
  const named = Object.values(element).flatMap((value) =>
    typeof value === 'string' ? kind.ports.filter((p) => value === p.id || value.startsWith(`${p.id}.`)) : [],
  );
  // Of a way from port to port the far one tells it from its neighbours.
  const port = named.at(-1)?.label ?? '';
  const asked = elementFigures(kind, element).find((figure) => figure.key === key);
  const label = lowerFirst(asked?.label ?? fieldLabel(element.type, path.at(-1) ?? ''));
  return { port, label: port ? label : `${id} ${label}` };
}

/** The figure as it is in this kind, with its unit; `none` where it has no such figure. */
export function figureText(kind: UnitKind, key: string): string {
  const [id = '', ...path] = key.split('.');
  const element = kind.elements.find((e) => e.id === id);
  const value = path.reduce<unknown>((at, part) => (at as Record<string, unknown> | undefined)?.[part], element);
  if (typeof value !== 'number') return 'none';
  const asked = element && elementFigures(kind, element).find((figure) => figure.key === key);
  return written(value, (asked?.limit ?? limitOfOwnFigure(kind, key))?.unit, path.at(-1) ?? '');
}

function written(value: number, unit: Limit['unit'] | undefined, field: string): string {
  if (unit === 'V') return formatVolts(value);
  if (unit === 'A') return ratings.includes(field) ? formatRating(value) : formatAmps(value);
  if (unit === 'W') return formatWatts(value);
  if (unit === 'ohm') return formatOhms(value);
  if (unit === 'Hz') return formatHertz(value);
  if (unit === 'dBm') return `${value} dBm`;
  return unit === 'dB' ? `${value} ${decibelUnits[field] ?? 'dB'}` : String(value);
}
