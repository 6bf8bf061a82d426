import { type Place, portName, type Station, type SurveyReport } from '../../core/index.ts';

export interface FoundItem {
  readonly key: string;
  readonly what: 'unit' | 'port' | 'cable' | 'finding';
  readonly label: string;
  readonly places: readonly Place[];
}

const most = 40;

/** Units, ports, cables and findings that have every word of the text; units first. Everything for an empty text. */
export function findItems(station: Station, report: SurveyReport | null, text: string): readonly FoundItem[] {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  const fits = (item: FoundItem) => words.every((word) => `${item.what} ${item.label}`.toLowerCase().includes(word));
  return allItems(station, report).filter(fits).slice(0, most);
}

function allItems(station: Station, report: SurveyReport | null): FoundItem[] {
  const units = station.units.map(
    (unit): FoundItem => ({ key: `unit ${unit.id}`, what: 'unit', label: unit.name, places: [{ unit: unit.id }] }),
  );
  const cables = station.cables.map((cable): FoundItem => {
    const label = `${cable.number}, ${portName(station, cable.a)} to ${portName(station, cable.b)}`;
    return { key: `cable ${cable.id}`, what: 'cable', label, places: [{ cable: cable.id }] };
  });
  const findings = (report?.findings ?? []).map(
    (finding): FoundItem => ({
      key: `finding ${finding.id}`,
      what: 'finding',
      label: finding.title,
      places: finding.at,
    }),
  );
  const ports = station.units.flatMap((unit) =>
    (station.kinds[unit.kind]?.ports ?? [])
      .filter((port) => port.label !== '')
      .map((port): FoundItem => {
        const ref = { unit: unit.id, port: port.id };
        return { key: `port ${unit.id}.${port.id}`, what: 'port', label: portName(station, ref), places: [ref] };
      }),
  );
  return [...units, ...cables, ...findings, ...ports];
}
