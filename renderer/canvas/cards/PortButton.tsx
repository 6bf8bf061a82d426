import { Handle } from '@xyflow/react';
import { memo } from 'react';
import type { Connector, Port } from '../../../core/index.ts';
import { useView } from '../../store/use-store.ts';
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
  const name = [unitName, port.label, connector.name].filter(Boolean).join(', ');
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
      {judged?.fit === 'misfit' && <span className="port-warning">!</span>}
      {port.label && <span className="port-label">{port.label}</span>}
    </Handle>
  );
});

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `Does not fit. One carries RF, the other audio` */
const verdictText = ({ fit, why }: Judgement): string => [words[fit], why].filter(Boolean).map(sentence).join('. ');
