import { useReactFlow } from '@xyflow/react';
import { useEffect } from 'react';
import { currentStation } from '../store/document.ts';
import { useView } from '../store/use-store.ts';
import { pulse } from './drawing-store.ts';

/** Brings the places that someone asked to see into view and points them out. */
export function useShownPlaces() {
  const shown = useView((v) => v.shown);
  const flow = useReactFlow();
  useEffect(() => {
    if (!shown || shown.places.length === 0) return;
    const { cables } = currentStation();
    const ids = shown.places.map((p) => ('unit' in p ? p.unit : p.cable));
    const units = shown.places.flatMap((p) => {
      if ('unit' in p) return [p.unit];
      const cable = cables.find((c) => c.id === p.cable);
      return cable ? [cable.a.unit, cable.b.unit] : [];
    });
    pulse(ids);
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    const zoom = flow.getZoom();
    const nodes = [...new Set(units)].map((id) => ({ id }));
    // Never nearer than it was, unless it was too far to read.
    void flow.fitView({ nodes, padding: 0.25, maxZoom: Math.max(zoom, 0.9), duration: calm ? 0 : 220 });
  }, [shown, flow]);
}
