/// <reference types="vite/client" />
import '@xyflow/react/dist/style.css';
import {
  ConnectionMode,
  type Edge,
  Handle,
  type Node,
  type NodeProps,
  Position,
  ReactFlow,
  useEdgesState,
  useNodesState,
} from '@xyflow/react';
import { memo } from 'react';
import { createRoot } from 'react-dom/client';
import type { BareCanvas, BareCard } from './canvas.ts';

declare global {
  interface Window {
    /** Put there before the page loads. */
    bareCanvas: BareCanvas;
  }
}

const positions = { left: Position.Left, right: Position.Right, top: Position.Top, bottom: Position.Bottom };

const Box = memo(function Box({ data }: NodeProps<Node<{ card: BareCard }>>) {
  const { name, width, height, ports } = data.card;
  return (
    <div style={{ width, height, border: '1px solid', background: 'white', boxSizing: 'border-box' }}>
      {name}
      {ports.map(({ id, side, x, y }) => (
        <Handle
          key={id}
          id={id}
          type="source"
          position={positions[side]}
          style={{ left: x, top: y, transform: 'translate(-50%, -50%)' }}
        />
      ))}
    </div>
  );
});

const nodeTypes = { box: Box };
const { width, height, viewport, cards, lines } = window.bareCanvas;
const startNodes = cards.map(
  (card): Node<{ card: BareCard }> => ({
    id: card.id,
    type: 'box',
    position: { x: card.x, y: card.y },
    data: { card },
  }),
);
const startEdges = lines.map(
  ({ id, from, to }): Edge => ({
    id,
    type: 'smoothstep',
    source: from.unit,
    sourceHandle: from.port,
    target: to.unit,
    targetHandle: to.port,
  }),
);
const snap: [number, number] = [18, 18];

function Canvas() {
  const [nodes, , onNodesChange] = useNodesState(startNodes);
  const [edges, , onEdgesChange] = useEdgesState(startEdges);
  return (
    <div style={{ width, height }}>
      <ReactFlow
        nodes={nodes}
        edges={edges}
        nodeTypes={nodeTypes}
        onNodesChange={onNodesChange}
        onEdgesChange={onEdgesChange}
        connectionMode={ConnectionMode.Loose}
        defaultViewport={viewport}
        minZoom={0.1}
        snapToGrid
        snapGrid={snap}
      />
    </div>
  );
}

const root = document.getElementById('root');
if (root) createRoot(root).render(<Canvas />);
