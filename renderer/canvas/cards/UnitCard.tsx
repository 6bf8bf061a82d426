import type { NodeProps } from '@xyflow/react';
import { memo } from 'react';
import { drawnKind, kindOf } from '../../../core/index.ts';
import { ofAnyAge } from '../../store/computed.ts';
import { useHookup, useOverlay } from '../../store/current.ts';
import { useResults, useStation, useView } from '../../store/use-store.ts';
import { OldFigure } from '../../widgets/OldFigure.tsx';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';
import { useDrawing } from '../drawing-store.ts';
import { sizeOf } from '../layout.ts';
import { badgeOf } from './badge-of.ts';
import { hasLiveLine, liveLine, ratingLine } from './figures.ts';
import { PortButton } from './PortButton.tsx';

/** One unit on the paper. It takes what it shows from the stores by its id. */
export const UnitCard = memo(function UnitCard({ id, selected }: NodeProps) {
  const unit = useStation((s) => s.units.find((u) => u.id === id));
  const kind = useStation((s) => (unit ? drawnKind(s.kinds, unit) : undefined));
  // With the user's own figures in place of the kind's.
  const own = useStation((s) => (unit && s.kinds[unit.kind] ? kindOf(s, unit) : undefined));
  const connectors = useStation((s) => s.connectors);
  const reading = useOverlay((o) => o?.units[id]);
  const live = useOverlay((o, report) => (kind ? liveLine(id, kind, o, report?.budget.loads ?? []) : ''));
  const missing = useResults((r) => r.is === 'missing');
  const pulsing = useDrawing((d) => d.pulsing.has(id));
  const marked = useView((v) => v.hovered.some((p) => 'unit' in p && p.unit === id && !p.port));
  if (!unit || !kind) return null;
  const size = sizeOf(kind, unit.name);
  const rating = ratingLine(own ?? kind);
  const classes = ['unit', `g-${kind.group}`];
  if (selected) classes.push('selected');
  if (pulsing) classes.push('pulsing');
  if (marked) classes.push('marked');
  if (reading?.sending) classes.push('sending');
  if (reading && reading.active.length > 0) classes.push('active');
  if (reading && !reading.powered) classes.push('unpowered');
  return (
    <div
      className={classes.join(' ')}
      style={{ width: size.width, height: size.height }}
      title={reading?.active.length ? `${unit.name}: ${reading.active.join(', ')}` : undefined}
    >
      <div className="unit-head" style={{ height: size.headHeight, paddingTop: size.nameTop }}>
        <span className="unit-name" title={unit.name}>
          {unit.name}
        </span>
        {unit.locked && <Lock />}
      </div>
      {rating && <p className="unit-figure">{rating}</p>}
      {live && (
        <p className="unit-figure live">
          <OldFigure />
          {live}
        </p>
      )}
      {missing && hasLiveLine(kind) && <p className="unit-figure">not computed</p>}
      {kind.ports.map((port) => {
        const spot = size.ports.find((s) => s.id === port.id);
        const connector = connectors[port.connector];
        if (!spot || !connector) return null;
        return (
          <PortButton key={port.id} unit={id} unitName={unit.name} port={port} connector={connector} spot={spot} />
        );
      })}
      <UnitBadge id={id} />
    </div>
  );
});

/** A closed padlock. */
const Lock = () => (
  <svg className="unit-lock" viewBox="0 0 12 12" width="11" height="11" aria-hidden="true">
    <path d="M2 5.5h8v5.5h-8zM4 5.5v-2a2 2 0 0 1 4 0v2" />
  </svg>
);

function UnitBadge({ id }: { id: string }) {
  const hookup = useHookup().id;
  const badge = useResults((r) => badgeOf(ofAnyAge(r), hookup, id));
  const layer = useView((v) => v.stage === 'draw' || v.stage === 'check');
  if (!badge || !layer) return null;
  return (
    <span className="unit-badge">
      <SeverityShape severity={badge.severity} count={badge.count} />
    </span>
  );
}
