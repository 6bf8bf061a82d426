import ELK, { type ElkNode } from 'elkjs/lib/elk-api.js';
import workerUrl from 'elkjs/lib/elk-worker.min.js?url';
import { drawnKind, type Station } from '../../core/index.ts';
import type { Move } from './arrange.ts';
import { onGrid } from './card-size.ts';
import { cardsOf, sizeOf } from './layout.ts';
import { settle } from './settle.ts';

const options = {
  'elk.algorithm': 'layered',
  'elk.direction': 'RIGHT',
  'elk.layered.spacing.nodeNodeBetweenLayers': '126',
  'elk.spacing.nodeNode': '45',
  'elk.spacing.componentComponent': '72',
  'elk.layered.nodePlacement.strategy': 'NETWORK_SIMPLEX',
  'elk.aspectRatio': '1.5',
};

const sides = { left: 'WEST', right: 'EAST', top: 'NORTH', bottom: 'SOUTH' };

/**
 * The moves that lay units out anew, power and signals from left to right. All of them, or those named; locked ones
 * stay, and so do those that are not named. The layout is worked out beside the page, so a large one holds nothing up.
 */
export async function tidyMoves(station: Station, ids?: readonly string[]): Promise<Move[]> {
  const named = new Set(ids ?? station.units.map((u) => u.id));
  const isFree = (id: string) => named.has(id) && !station.units.find((u) => u.id === id)?.locked;
  const cards = cardsOf(station);
  const elk = new ELK({ workerUrl, workerFactory: (url) => new Worker(url ?? workerUrl) });
  try {
    const laid = await elk.layout(graphOf(station, named));
    const places = (laid.children ?? []).map(({ id, x = 0, y = 0 }) => ({ id, position: { x, y } }));
    return settle(cards, places, isFree).map(({ id, position }) => ({ id, position: onGrid(position) }));
  } finally {
    elk.terminateWorker();
  }
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
