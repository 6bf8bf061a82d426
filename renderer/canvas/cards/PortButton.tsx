import { Handle } from '@xyflow/react';
import { memo } from 'react';
import { type Connector, type Port, ringAt, ringColours } from '../../../core/index.ts';
import { useStation, useView } from '../../store/use-store.ts';
import {
  askPartners,
  explainPort,
  giveUp,
  type Judgement,
  layingStore,
  pickPort,
  proposalTo,
  useLaying,
} from '../laying/laying.ts';
import type { PortSpot } from './card-size.ts';
import { Face } from './Face.tsx';
import { PortRing } from './PortRing.tsx';
import { handleSides } from './to-handles.ts';

interface Props {
  unit: string;
  unitName: string;
  port: Port;
  connector: Connector;
  spot: PortSpot;
}

const words = {
  mates: 'fits',
  adapter: 'could be joined by an adapter',
  misfit: 'goes in, but should not',
  none: 'does not fit',
};

/** A port: a picture of its connector that a cable is drawn from, taken by a click or Space; Enter lists what it could be joined to. */
export const PortButton = memo(function PortButton({ unit, unitName, port, connector, spot }: Props) {
  const key = `${unit}.${port.id}`;
  const judged = useLaying((s) => s.judged.get(key));
  const taken = useLaying((s) => s.from?.unit === unit && s.from.port === port.id);
  const marked = useView((v) => v.hovered.some((p) => 'port' in p && p.unit === unit && p.port === port.id));
  const own = useStation((s) => ringAt(s, { unit, port: port.id }));
  const planned = useView((v) => v.rings.get(key));
  const ring = planned === undefined ? own : (planned ?? undefined);
  const worn = own && `ring ${ringColours[own].name}`;
  const name = [unitName, port.label, connector.name, worn].filter(Boolean).join(', ');
  const verdict = judged ? verdictText(judged) : '';
  const explain = () =>
    judged && explainPort([`${name}. ${verdict}`, proposalTo({ unit, port: port.id })].filter(Boolean).join('. '));
  const state = taken ? 'taken' : (judged?.fit ?? '');
  return (
    <Handle
      type="source"
      id={port.id}
      position={handleSides[port.side]}
      className={`port nodrag ${port.side} ${state} ${marked ? 'marked' : ''}`}
      style={{ left: spot.x, top: spot.y }}
      role="button"
      tabIndex={0}
      aria-label={judged ? `${name}: ${words[judged.fit]}` : name}
      aria-pressed={taken}
      title={judged ? verdict : name}
      onPointerEnter={explain}
      onPointerLeave={() => judged && explainPort('')}
      onFocus={explain}
      onBlur={() => judged && explainPort('')}
      onClick={(event) => {
        // The card below would be selected, too.
        event.stopPropagation();
        pickPort({ unit, port: port.id });
      }}
      onContextMenu={(event) => {
        event.preventDefault();
        askPartners({ unit, port: port.id });
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ' && event.key !== 'Escape') return;
        event.preventDefault();
        event.stopPropagation();
        if (event.key === 'Escape') giveUp();
        else if (layingStore.getState().from || event.key === ' ') pickPort({ unit, port: port.id });
        else askPartners({ unit, port: port.id });
      }}
    >
      <Face face={connector.face} />
      {ring && (
        <svg className="port-ring" viewBox="-12 -12 24 24" width="24" height="24" aria-hidden="true">
          <PortRing ring={ring} side={port.side} planned={ring !== own} />
        </svg>
      )}
      {judged?.fit === 'misfit' && <span className="port-warning">!</span>}
      {port.label && <span className="port-label">{port.label}</span>}
    </Handle>
  );
});

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `Does not fit. One carries RF, the other audio` */
const verdictText = ({ fit, why }: Judgement): string => [words[fit], why].filter(Boolean).map(sentence).join('. ');
