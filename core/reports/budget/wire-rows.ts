import type { TriedHookup } from '../../rules/rule.ts';
import { classOf } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { busiest } from '../../trial/power/battery-life.ts';
import { limitOfWire } from '../../trial/power/guarded-wire.ts';
import { wiresOf } from '../whereabouts.ts';
import { drawOf, inHookup } from './draw-of.ts';
import type { WireRow } from './rows.ts';

/** What each power cable of a hook-up carries and loses. */
export function wireRows(station: Station, tried: TriedHookup): WireRow[] {
  const { trial } = tried;
  const { dc } = busiest(trial);
  return station.cables.flatMap((cable): WireRow[] => {
    if (classOf(station, cable) !== 'dc') return [];
    const wires = wiresOf(trial.circuit, cable.id);
    const live = wires.find((w) => w.role === 'live');
    if (!live) return [];
    const limit = limitOfWire(station, { cable: cable.id, role: 'live' });
    return [
      {
        ...inHookup(tried),
        cable: cable.id,
        number: cable.number,
        wire: limit?.wire ?? station.cableKinds[cable.kind]?.name ?? cable.kind,
        ...drawOf(station.plan, trial, live.index, Math.abs),
        limitAmps: limit?.limitAmps ?? null,
        limitSource: limit?.limitSource ?? '',
        dropVolts: wires.reduce((sum, w) => sum + Math.abs(dc.between(w.part.a, w.part.b) ?? 0), 0),
      },
    ];
  });
}
