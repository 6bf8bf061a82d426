import type { EdgeProps } from '@xyflow/react';
import { memo } from 'react';
import { type Cable, classOf } from '../../../core/index.ts';
import { useHookup, useOverlay } from '../../store/current.ts';
import { useStation, useView } from '../../store/use-store.ts';
import { useDrawing } from '../drawing-store.ts';
import type { Point } from '../routing/geometry.ts';
import { noHops } from '../routing/hops.ts';
import { CableFlags } from './CableFlags.tsx';
import { isHot, pillText } from './cable-figures.ts';
import { LabelLayer } from './LabelLayer.tsx';
import { pathOf } from './path-of.ts';
import { Strokes } from './Strokes.tsx';

/** One cable, drawn as the thing that it is, with its flags and what it carries. */
export const CableLine = memo(function CableLine({ id, selected = false }: EdgeProps) {
  const cable = useStation((s) => s.cables.find((c) => c.id === id));
  const route = useDrawing((d) => d.routes.get(id));
  if (!cable || !route) return null;
  return <CableOnRoute cable={cable} route={route} selected={selected} />;
});

function CableOnRoute({ cable, route, selected }: { cable: Cable; route: Point[]; selected: boolean }) {
  const { id } = cable;
  const hops = useDrawing((d) => d.hops.get(id)) ?? noHops;
  const kind = useStation((s) => classOf(s, cable));
  const reading = useOverlay((o) => o?.cables[id]);
  const hookup = useHookup().id;
  const currents = useView((v) => v.stage === 'budget');
  const levels = useView((v) => v.moment === 'sending' && v.stage !== 'cables');
  const marked = useView((v) => v.hovered.some((p) => 'cable' in p && p.cable === id));
  const astray = useView((v) => v.supposed?.change != null && v.supposed.cables.includes(id));
  const pulsing = useDrawing((d) => d.pulsing.has(id));
  const away = cable.hookups !== undefined && !cable.hookups.includes(hookup);
  const classes = ['cable', `c-${kind}`];
  if (selected) classes.push('selected');
  if (away) classes.push('away');
  if (astray) classes.push('astray');
  if (marked) classes.push('marked');
  if (pulsing) classes.push('pulsing');
  if (isHot(reading)) classes.push('hot');
  const pill = away ? '' : pillText({ class: kind, reading, selected, currents, levels });
  const path = pathOf(route, hops);
  return (
    <g className={classes.join(' ')}>
      <path d={path} className="c-halo" />
      <Strokes kind={kind} path={path} route={route} hops={hops} />
      <path d={path} className="c-touch react-flow__edge-interaction" />
      <LabelLayer>
        <CableFlags cable={cable} route={route} away={away} selected={selected} pill={pill} hot={isHot(reading)} />
      </LabelLayer>
    </g>
  );
}
