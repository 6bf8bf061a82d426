import { type Cable, leadOf, parseWire, wireName } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { TextField } from '../../../widgets/TextField.tsx';

/** The size of a lead's cores, as a gauge or in square millimetres; any size makes a lead of its own. */
export function WireField({ cable }: { cable: Cable }) {
  const kind = useStation((s) => s.cableKinds[cable.kind]);
  if (kind?.class !== 'dc' || kind.screen || kind.plugs || kind.cores !== 2) return null;
  const commit = (text: string) => {
    const parsed = parseWire(text);
    if ('problem' in parsed) return parsed.problem;
    const lead = leadOf(parsed.wire);
    const carried = { cableKinds: { [lead.id]: lead.kind } };
    change({ type: 'updateCable', id: cable.id, set: { kind: lead.id }, carried });
    return undefined;
  };
  return <TextField label="Wire" value={wireName(kind.core)} onCommit={commit} figures />;
}
