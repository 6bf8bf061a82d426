import { type Place, portName, type Station } from '../../../core/index.ts';

/** `Changeover · receiver`, `Transmitter`, `D4 at Receiver · power`: a place as people say it; empty where it is gone. */
export function placeName(station: Station, place: Place): string {
  if ('cable' in place) {
    const cable = station.cables.find((c) => c.id === place.cable);
    if (!cable) return '';
    return place.end ? `${cable.number} at ${portName(station, cable[place.end])}` : cable.number;
  }
  const unit = station.units.find((u) => u.id === place.unit);
  if (!unit) return '';
  const known = place.port && station.kinds[unit.kind]?.ports.some((p) => p.id === place.port);
  return known && place.port ? portName(station, { unit: unit.id, port: place.port }) : unit.name;
}
