import type { Page } from 'playwright-core';
import type { Station } from '../../../core/station/schema/schema.ts';
import { sizeOf } from '../../../renderer/canvas/layout.ts';
import type { BareCanvas } from './bare/canvas.ts';

/** The same drawing for the bare page: as large, with cards and ports of the same sizes, seen from the same distance. */
export async function bareCanvasOf(page: Page, station: Station): Promise<BareCanvas> {
  const seen = await page.evaluate(() => {
    const paper = document.querySelector('.react-flow')?.getBoundingClientRect();
    const viewport = document.querySelector('.react-flow__viewport');
    const { a, e, f } = new DOMMatrix(viewport ? getComputedStyle(viewport).transform : '');
    return { width: paper?.width ?? 0, height: paper?.height ?? 0, viewport: { x: e, y: f, zoom: a } };
  });
  const cards = station.units.flatMap(({ id, kind: kindId, name, position }) => {
    const kind = station.kinds[kindId];
    if (!kind) return [];
    const { width, height, ports } = sizeOf(kind, name);
    return [{ id, name, ...position, width, height, ports: ports.map(({ id, side, x, y }) => ({ id, side, x, y })) }];
  });
  const lines = station.cables.map(({ id, a, b }) => ({
    id,
    from: { unit: a.unit, port: a.port },
    to: { unit: b.unit, port: b.port },
  }));
  return { ...seen, cards, lines };
}
