import type { SignalEnd } from '../circuit/circuit.ts';
import { voltsBetween } from '../keydown/feel.ts';
import { dbuFromVolts } from '../quantity/dbu-from-volts.ts';
import type { Facts } from '../rules/rule.ts';
import type { Station } from '../station/schema/schema.ts';
import { audioOf, signalName } from '../trial/audio-levels.ts';
import type { AudioRow } from './report-rows.ts';

/** `Receiver · phones, tip` */
const audioContactName = (station: Station, end: SignalEnd<'audioSource'> | SignalEnd<'audioLoad'>): string =>
  `${signalName(station, end)}, ${end.spec.contact.split('.')[1]}`;

/** Every audio output at every input that it gets to, in receive and in sending; the same level is given once. */
export function reportAudio({ station, hookups }: Facts): AudioRow[] {
  return hookups.flatMap(({ hookup, trial }) => {
    const { sources, loads } = trial.circuit.signals;
    const rows = new Map<string, AudioRow>();
    for (const { name, reach, levels, drives } of audioOf(trial)) {
      for (const { source, load, volts } of levels) {
        const [from, to] = [sources[source], loads[load]];
        const drive = drives.find((d) => d.source === source);
        if (!from || !to || !drive || from.unit === to.unit || volts < 1e-6) continue;
        const key = `${name} ${source} ${load}`;
        if ((rows.get(key)?.volts ?? 0) >= volts) continue;
        rows.set(key, {
          hookup: hookup.id,
          hookupName: hookup.name,
          moment: name === 'receive' ? 'receive' : 'sending',
          source: audioContactName(station, from),
          sink: audioContactName(station, to),
          openVolts: drive.openVolts,
          sourceOhms: from.spec.ohms,
          loadOhms: drive.ohms,
          volts,
          dbu: dbuFromVolts(volts),
          fullVolts: to.spec.fullVolts ?? null,
          overloadVolts: to.spec.overloadVolts ?? null,
          dcVolts: voltsBetween(reach.dc, to.node, to.reference) ?? 0,
        });
      }
    }
    return [...rows.values()];
  });
}
