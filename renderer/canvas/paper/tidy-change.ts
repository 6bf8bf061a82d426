import Elk, { type ELK, type ElkNode } from 'elkjs/lib/elk-api.js';
import workerUrl from 'elkjs/lib/elk-worker.min.js?url';
import { type Change, drawnKind, type Mark, type Station } from '../../../core/index.ts';
import { inTime } from '../../worker/in-time.ts';
import { surveyLimitMs } from '../../worker/limits.ts';
import { onGrid } from '../cards/card-size.ts';
import { cardsOf, type Positions, sizeOf } from '../layout.ts';
import type { Card } from './arrange.ts';
import { settle } from './settle.ts';
import { unitsInZones, zoneAround } from './zones.ts';

const options = {
  'elk.algorithm': 'layered',
  'elk.direction': 'RIGHT',
  'elk.layered.spacing.nodeNodeBetweenLayers': '108',
  'elk.spacing.nodeNode': '45',
  'elk.spacing.componentComponent': '72',
  'elk.layered.nodePlacement.strategy': 'NETWORK_SIMPLEX',
  // A long chain goes on in a further row: the drawing keeps the shape of a screen or a page.
  'elk.layered.wrapping.strategy': 'MULTI_EDGE',
  'elk.aspectRatio': '1.2',
};

const sides = { left: 'WEST', right: 'EAST', top: 'NORTH', bottom: 'SOUTH' };

/**
 * The change that lays units out anew, power and signals from left to right. All of them, each in its zone, or those
 * named; locked ones stay. Zones then fit around their units again. The layout is worked out beside the page, so a large
 * one holds nothing up.
 */
export async function tidyChange(station: Station, ids?: readonly string[]): Promise<Change> {
  const elk = new Elk({ workerUrl, workerFactory: (url) => new Worker(url ?? workerUrl) });
  try {
    const zones = ids ? [] : unitsInZones(station, cardsOf(station));
    const zoned = new Set(zones.flatMap((z) => z.units));
    const rest = ids ?? station.units.map((u) => u.id).filter((id) => !zoned.has(id));
    let moved: Positions = new Map();
    for (const group of [...zones.map((z) => z.units), rest]) {
      const moves = await groupMoves(elk, station, group, moved);
      moved = new Map([...moved, ...moves.map(({ id, position }) => [id, onGrid(position)] as const)]);
    }
    const moves = [...moved].map(([id, position]) => ({ id, position }));
    const fitted = zones.flatMap(({ zone, units }) => fittedZone(zone, units, cardsOf(station, moved)));
    return { type: 'all', name: 'Tidy up', changes: [{ type: 'moveUnits', moves }, ...fitted] };
  } finally {
    elk.terminateWorker();
  }
}

async function groupMoves(elk: ELK, station: Station, group: readonly string[], moved: Positions) {
  const named = new Set(group);
  const locked = new Set(station.units.filter((u) => u.locked).map((u) => u.id));
  const laid = await inTime(elk.layout(graphOf(station, named)), surveyLimitMs(station));
  const places = (laid.children ?? []).map(({ id, x = 0, y = 0 }) => ({ id, position: { x, y } }));
  return settle(cardsOf(station, moved), places, (id) => named.has(id) && !locked.has(id));
}

function fittedZone(zone: Mark, units: readonly string[], cards: readonly Card[]): Change[] {
  const around = zoneAround(cards.filter((c) => units.includes(c.id)));
  if (!around) return [];
  const { x, y, width, height } = around;
  return [{ type: 'updateMark', id: zone.id, set: { position: { x, y }, width, height } }];
}

/** The named units with their ports where the cards have them, and the cables among them. */
function graphOf(station: Station, named: ReadonlySet<string>): ElkNode {
  const children = station.units.flatMap((unit) => {
    const kind = drawnKind(station.kinds, unit);
    if (!kind || !named.has(unit.id)) return [];
    const { width, height, ports } = sizeOf(kind, unit.name);
    return [
      {
        id: unit.id,
        width,
        height,
        layoutOptions: { 'elk.portConstraints': 'FIXED_POS' },
        ports: ports.map(({ id, side, x, y }) => ({
          id: `${unit.id}.${id}`,
          x,
          y,
          width: 0,
          height: 0,
          layoutOptions: { 'elk.port.side': sides[side] },
        })),
      },
    ];
  });
  const edges = station.cables
    .filter(({ a, b }) => named.has(a.unit) && named.has(b.unit) && a.unit !== b.unit)
    .map(({ id, a, b }) => ({ id, sources: [`${a.unit}.${a.port}`], targets: [`${b.unit}.${b.port}`] }))
    .map((edge) =>
      leavesLeft(children, edge.sources[0]) ? { ...edge, sources: edge.targets, targets: edge.sources } : edge,
    );
  return { id: 'station', layoutOptions: options, children, edges };
}

/** A cable drawn from a port on the left goes backwards: the layout takes it the other way round. */
function leavesLeft(nodes: readonly ElkNode[], port: string | undefined): boolean {
  return nodes.some((n) => n.ports?.some((p) => p.id === port && p.layoutOptions?.['elk.port.side'] === 'WEST'));
}
