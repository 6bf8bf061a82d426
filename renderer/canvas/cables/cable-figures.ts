import {
  type CableReading,
  formatAmps,
  formatDbm,
  formatVolts,
  formatWatts,
  type PortClass,
} from '../../../core/index.ts';

/** Whether a cable carries transmit power on a path it is meant to take: then it is drawn warm. */
export const isHot = (reading: CableReading | undefined): boolean =>
  (reading?.carriesRf ?? false) && (reading?.watts ?? 0) >= 0.01;

interface Shown {
  readonly class: PortClass;
  readonly reading: CableReading | undefined;
  readonly selected: boolean;
  /** Stage and moment decide which cables say something unasked. */
  readonly currents: boolean;
  readonly levels: boolean;
}

/** What a cable says on its pill: watts while it carries power, current in the budget, everything while it is selected. */
export function pillText({ class: kind, reading, selected, currents, levels }: Shown): string {
  if (!reading) return '';
  if (kind === 'rf') return rfPill(reading, selected, levels);
  const { volts, amps } = reading;
  if (kind === 'dc' && selected && volts !== null) return `${formatVolts(volts)} · ${formatAmps(amps)}`;
  if (kind === 'dc') return currents && amps >= 0.0005 ? formatAmps(amps) : '';
  return selected && kind === 'control' && volts !== null ? formatVolts(volts) : '';
}

function rfPill(reading: CableReading, selected: boolean, levels: boolean): string {
  const { dbm, watts } = reading;
  if (levels && isHot(reading) && watts !== null) return formatWatts(watts);
  if (dbm === null || !Number.isFinite(dbm)) return '';
  return selected || (levels && dbm > -20) ? formatDbm(dbm) : '';
}
