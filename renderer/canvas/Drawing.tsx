import '@xyflow/react/dist/base.css';
import './drawing.css';
import './cards/cards.css';
import './cards/ports.css';
import './cables/cables.css';
import {
  Background,
  BackgroundVariant,
  type Connection,
  ConnectionLineType,
  ConnectionMode,
  type Node,
  ReactFlow,
  ReactFlowProvider,
  useReactFlow,
} from '@xyflow/react';
import { type DragEvent, useCallback, useRef } from 'react';
import { useStation } from '../store/use-store.ts';
import { pointAt, select, viewStore } from '../store/view.ts';
import { CableLine } from './cables/CableLine.tsx';
import { WrongWays } from './cables/WrongWays.tsx';
import { gridPx } from './cards/card-size.ts';
import { UnitCard } from './cards/UnitCard.tsx';
import { kindMime } from './laying/kind-mime.ts';
import { LayingHint } from './laying/LayingHint.tsx';
import { askPartners, finishLaying, giveUp, layingStore, startLaying } from './laying/laying.ts';
import { cableAt, placeDropped } from './laying/place-dropped.ts';
import { Guides } from './paper/Guides.tsx';
import { MarkCard } from './paper/MarkCard.tsx';
import { markOfNode } from './paper/mark-nodes.ts';
import { PaperMap } from './paper/PaperMap.tsx';
import { PaperTools } from './paper/PaperTools.tsx';
import { useCanvasItems } from './use-canvas-items.ts';
import { useFitting } from './use-fitting.ts';
import { useShownPlaces } from './use-shown-places.ts';

const nodeTypes = { unit: UnitCard, mark: MarkCard };
const edgeTypes = { cable: CableLine };
/** Read out to those who reach a unit by keys. */
const spoken = {
  'node.a11yDescription.default':
    'Enter selects the unit, arrow keys move it once it is selected, Delete removes it. Tab goes on to its ports.',
  'node.a11yDescription.ariaLiveMessage': ({ x, y }: { x: number; y: number }) => `Moved to ${x} across, ${y} down.`,
};
/** Held while clicking, these add to the selection; Shift on free paper draws a frame around what is meant. */
const addKeys = ['Shift', 'Control', 'Meta'];
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

  const pointOf = ({ clientX, clientY }: { clientX: number; clientY: number }) =>
    screenToFlowPosition({ x: clientX, y: clientY });
  const drop = (event: DragEvent) => {
    const kind = event.dataTransfer.getData(kindMime);
    if (!kind) return;
    event.preventDefault();
    pointAt([]);
    placeDropped(kind, pointOf(event));
  };
  const dragOver = (event: DragEvent) => {
    if (!event.dataTransfer.types.includes(kindMime)) return;
    event.preventDefault();
    // A cable that a unit is held over lights up: it can go in there.
    const cable = cableAt(pointOf(event));
    pointAt(cable ? [{ cable }] : []);
  };
  // Handlers stay the same: a new one tells every card and cable of itself, at every move of a drag.
  /** A cable let go over free paper asks what it should go to. */
  const endConnection = useCallback(
    (event: MouseEvent | TouchEvent, { toHandle }: { toHandle: unknown }) => {
      const { from } = layingStore.getState();
      if (toHandle || !from) return;
      const at = 'clientX' in event ? event : event.changedTouches[0];
      const onPaper = event.target instanceof Element && event.target.classList.contains('react-flow__pane');
      if (at && onPaper) askPartners(from, screenToFlowPosition({ x: at.clientX, y: at.clientY }));
      else giveUp();
    },
    [screenToFlowPosition],
  );

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a landing place for the mouse; the shelf's rows are buttons too
    <div
      ref={wrapper}
      className={`paper ${empty ? 'empty' : ''}`}
      onDrop={drop}
      onDragOver={dragOver}
      onDragLeave={() => pointAt([])}
    >
      <ReactFlow
        nodes={nodes}
        edges={edges}
        nodeTypes={nodeTypes}
        edgeTypes={edgeTypes}
        onNodesChange={onNodesChange}
        onEdgesChange={onEdgesChange}
        onConnectStart={startConnection}
        onConnect={lay}
        onConnectEnd={endConnection}
        onMoveStart={moving.byHand}
        onMove={moving.onMove}
        connectionMode={ConnectionMode.Loose}
        connectOnClick={false}
        connectionLineType={ConnectionLineType.SmoothStep}
        connectionRadius={18}
        edgesFocusable={false}
        deleteKeyCode={null}
        multiSelectionKeyCode={addKeys}
        onNodeClick={selectAlone}
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
        <PaperTools />
        <PaperMap />
        <Guides />
        <WrongWays />
      </ReactFlow>
      <LayingHint />
    </div>
  );
}

/** The library keeps several selected where one of them is clicked; people mean the one. */
function selectAlone({ shiftKey, ctrlKey, metaKey }: React.MouseEvent, { id }: Node) {
  const { units, cables, marks } = viewStore.getState().selection;
  if (shiftKey || ctrlKey || metaKey || units.length + cables.length + marks.length < 2) return;
  const mark = markOfNode(id);
  select(mark === undefined ? { units: [id] } : { marks: [mark] });
}

/** The library names the ends by where the drag began only in strict mode; the start is known here. */
function lay({ source, sourceHandle, target, targetHandle }: Connection) {
  if (!sourceHandle || !targetHandle) return;
  startLaying({ unit: source, port: sourceHandle });
  finishLaying({ unit: target, port: targetHandle });
}

function startConnection(_: unknown, { nodeId, handleId }: { nodeId: string | null; handleId: string | null }) {
  if (nodeId && handleId) startLaying({ unit: nodeId, port: handleId });
}
