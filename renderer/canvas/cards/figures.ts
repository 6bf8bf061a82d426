import {
  formatAmps,
  formatDbm,
  formatOhms,
  formatPercent,
  formatRating,
  formatVolts,
  formatWatts,
  type LoadRow,
  type Overlay,
  type UnitElement,
  type UnitKind,
  wattsFromDbm,
} from '../../../core/index.ts';

/** The most letters that a line of figures has; cards keep room for so many. */
export const figureLetters = 17;

/** What a card says of its kind at any time: `13.8 V · 3 A` for a supply, `50 Ω · 5 W` for a load. Empty for most kinds. */
export function ratingLine(kind: UnitKind): string {
  for (const element of kind.elements) {
    if (element.type === 'supply') return `${trim(formatVolts(element.volts))} · ${formatRating(element.amps)}`;
    if (element.type === 'battery') return `${element.ampHours} Ah · ${formatPercent(element.charge)}`;
    if (element.type === 'rfLoad' && element.role === 'termination') {
      const ohms = trim(formatOhms(element.ohms));
      return element.watts ? `${ohms} · ${trim(formatWatts(element.watts))}` : ohms;
    }
  }
  return '';
}

/** Whether a kind has something to say at a moment: it takes or gives current, or makes or ends RF. */
export const hasLiveLine = (kind: UnitKind): boolean =>
  kind.elements.some((e) => (e.type === 'rfLoad' ? e.role !== 'receiver' : liveTypes.has(e.type)));

const liveTypes: ReadonlySet<UnitElement['type']> = new Set(['supply', 'battery', 'load', 'converter', 'rfSource']);

/** How many lines of figures a card keeps room for, whatever the moment. */
export const figureLines = (kind: UnitKind): number => (ratingLine(kind) ? 1 : 0) + (hasLiveLine(kind) ? 1 : 0);

/** What a unit does at a moment: `sending 3.02 W`, `13.7 V · 85 mA`, `no power`. */
export function liveLine(id: string, kind: UnitKind, overlay: Overlay | null, loads: readonly LoadRow[]): string {
  const unit = overlay?.units[id];
  if (!overlay || !unit || !hasLiveLine(kind)) return '';
  const dbm = (port: string) => overlay.ports[`${id}.${port}`]?.dbm ?? null;
  for (const element of kind.elements) {
    if (element.type === 'supply' || element.type === 'battery') return supplyLine(unit.supplyAmps);
    if (element.type === 'rfSource' && unit.sending) {
      const level = dbm(element.port);
      if (level !== null) return `sending ${formatWatts(wattsFromDbm(level))}`;
    }
    if (element.type === 'rfLoad' && element.role !== 'receiver') return levelLine(dbm(element.port));
  }
  return unit.powered ? loadLine(id, overlay, loads) : 'no power';
}

const supplyLine = (amps: number | undefined): string => (amps === undefined ? '' : `${formatAmps(amps)} now`);

function loadLine(id: string, { hookup, moment }: Overlay, loads: readonly LoadRow[]): string {
  const own = loads.filter((row) => row.unit === id && row.hookup === hookup);
  const [first] = own;
  if (!first) return '';
  const amps = own.reduce((sum, row) => sum + (moment === 'sending' ? row.sendingAmps : row.receiveAmps), 0);
  return `${formatVolts(moment === 'sending' ? first.sendingVolts : first.receiveVolts)} · ${formatAmps(amps)}`;
}

function levelLine(dbm: number | null): string {
  if (dbm === null || !Number.isFinite(dbm) || dbm < -60) return '';
  return dbm >= 10 ? formatWatts(wattsFromDbm(dbm)) : formatDbm(dbm);
}

/** `13.80 V` as it is printed on a box: `13.8 V`. */
const trim = (text: string): string => text.replace(/(\.\d*?)0+(?=\s)/, '$1').replace(/\.(?=\s)/, '');
