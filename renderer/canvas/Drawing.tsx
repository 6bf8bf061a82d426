import '@xyflow/react/dist/base.css';
import './drawing.css';
import './cards.css';
import './ports.css';
import './cables.css';
import {
  Background,
  BackgroundVariant,
  type Connection,
  ConnectionLineType,
  ConnectionMode,
  ReactFlow,
  ReactFlowProvider,
  useReactFlow,
} from '@xyflow/react';
import { type DragEvent, useRef } from 'react';
import { placeKind } from '../store/place-kind.ts';
import { useStation } from '../store/use-store.ts';
import { CableLine } from './CableLine.tsx';
import { gridPx } from './card-size.ts';
import { kindMime } from './kind-mime.ts';
import { LayingHint } from './LayingHint.tsx';
import { finishLaying, giveUp, startLaying } from './laying.ts';
import { UnitCard } from './UnitCard.tsx';
import { useCanvasItems } from './use-canvas-items.ts';
import { useFitting } from './use-fitting.ts';
import { useShownPlaces } from './use-shown-places.ts';
import { ZoomButtons } from './ZoomButtons.tsx';

const nodeTypes = { unit: UnitCard };
const edgeTypes = { cable: CableLine };
/** Read out to those who reach a unit by keys. */
const spoken = {
  'node.a11yDescription.default':
    'Enter selects the unit, arrow keys move it once it is selected, Delete removes it. Tab goes on to its ports.',
  'node.a11yDescription.ariaLiveMessage': ({ x, y }: { x: number; y: number }) => `Moved to ${x} across, ${y} down.`,
};
const snap: [number, number] = [gridPx, gridPx];

/** The station on its paper; the only place that knows how it is drawn. */
export function Drawing() {
  return (
    <ReactFlowProvider>
      <Paper />
    </ReactFlowProvider>
  );
}

function Paper() {
  const wrapper = useRef<HTMLDivElement>(null);
  const { nodes, edges, onNodesChange, onEdgesChange } = useCanvasItems();
  const moving = useFitting(wrapper);
  useShownPlaces();
  const { screenToFlowPosition } = useReactFlow();
  const empty = useStation((s) => s.units.length === 0);

  const drop = (event: DragEvent) => {
    const kind = event.dataTransfer.getData(kindMime);
    if (!kind) return;
    event.preventDefault();
    const { x, y } = screenToFlowPosition({ x: event.clientX, y: event.clientY });
    const onGrid = (value: number) => Math.round(value / gridPx) * gridPx;
    placeKind(kind, { x: onGrid(x - 54), y: onGrid(y - 14) });
  };

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a landing place for the mouse; the shelf's rows are buttons too
    <div
      ref={wrapper}
      className={`paper ${empty ? 'empty' : ''}`}
      onDrop={drop}
      onDragOver={(event) => {
        if (event.dataTransfer.types.includes(kindMime)) event.preventDefault();
      }}
    >
      <ReactFlow
        nodes={nodes}
        edges={edges}
        nodeTypes={nodeTypes}
        edgeTypes={edgeTypes}
        onNodesChange={onNodesChange}
        onEdgesChange={onEdgesChange}
        onConnectStart={(_, { nodeId, handleId }) =>
          nodeId && handleId && startLaying({ unit: nodeId, port: handleId })
        }
        onConnect={({ target, targetHandle, source, sourceHandle }: Connection) =>
          lay(source, sourceHandle, target, targetHandle)
        }
        onConnectEnd={(_, { toHandle }) => !toHandle && giveUp()}
        onMoveStart={moving.byHand}
        onMove={moving.onMove}
        connectionMode={ConnectionMode.Loose}
        connectOnClick={false}
        connectionLineType={ConnectionLineType.SmoothStep}
        connectionRadius={18}
        edgesFocusable={false}
        deleteKeyCode={null}
        snapToGrid
        snapGrid={snap}
        minZoom={0.1}
        maxZoom={2.5}
        zoomOnDoubleClick={false}
        ariaLabelConfig={spoken}
        proOptions={{ hideAttribution: true }}
        aria-label="Drawing of the station"
      >
        <Background variant={BackgroundVariant.Dots} gap={gridPx} size={1.6} />
        <ZoomButtons />
      </ReactFlow>
      <LayingHint />
    </div>
  );
}

/** The library names the ends by where the drag began only in strict mode; the start is known here. */
function lay(source: string, sourceHandle: string | null, target: string, targetHandle: string | null) {
  if (!sourceHandle || !targetHandle) return;
  startLaying({ unit: source, port: sourceHandle });
  finishLaying({ unit: target, port: targetHandle });
}
