import { MiniMap, type Node } from '@xyflow/react';
import { useStation, useView } from '../../store/use-store.ts';
import { markOfNode } from './mark-nodes.ts';

/** From so many units on a small map is shown unless the user says otherwise. */
const manyUnits = 30;

const mapSize = { width: 150, height: 100 };

/** Whether the small map of the drawing is on. */
export function useMapShown(): boolean {
  const many = useStation((s) => s.units.length >= manyUnits);
  return useView((v) => v.map ?? many);
}

/** The whole drawing, small: to see where one is and to go elsewhere. */
export function PaperMap() {
  const shown = useMapShown();
  return (
    shown && (
      <MiniMap
        pannable
        zoomable
        className="paper-map"
        ariaLabel="Map of the station"
        nodeClassName={groupClass}
        style={mapSize}
      />
    )
  );
}

function groupClass({ id, data }: Node): string {
  return markOfNode(id) === undefined ? `g-${data['group']}` : 'map-mark';
}
