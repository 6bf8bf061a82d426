import { dbmFromWatts, wattsFromDbm } from '../quantity/decibel.ts';
import { edit } from '../station/edit.ts';
import { kindOf, portName } from '../station/parts.ts';
import type { Station, Unit } from '../station/schema/schema.ts';
import type { ElementOf, UnitElement, UnitKind } from '../station/schema/unit-kind.ts';

/** Figures to try in place of the drawn ones; those of units by `unit.element`. */
export interface Supposed {
  /** Of supplies. */
  readonly volts?: Readonly<Record<string, number>>;
  /** Of batteries; 1 is full. */
  readonly charge?: Readonly<Record<string, number>>;
  /** Of transmitters: what they make. */
  readonly watts?: Readonly<Record<string, number>>;
  /** Share of the operating time spent sending. */
  readonly sendShare?: number;
}

/** Something of a unit that `whatIf` can vary, with its drawn figure. */
export interface Variable {
  /** `unit.element` */
  readonly key: string;
  readonly unit: string;
  readonly name: string;
  readonly figure: 'volts' | 'charge' | 'watts';
  readonly value: number;
}

type Varied = ElementOf<'supply'> | ElementOf<'battery'> | ElementOf<'rfSource'>;

const isVaried = (element: UnitElement): element is Varied =>
  element.type === 'supply' || element.type === 'battery' || element.type === 'rfSource';

/** The supplies, batteries and transmitters of a station, in the order of its units. */
export const variablesOf = (station: Station): Variable[] =>
  station.units.flatMap((unit) => {
    const varied = kindOf(station, unit).elements.filter(isVaried);
    return varied.map((element): Variable => {
      const alike = varied.filter((e) => e.type === element.type).length;
      const name = alike > 1 ? portName(station, { unit: unit.id, port: portOf(element) }) : unit.name;
      return { key: `${unit.id}.${element.id}`, unit: unit.id, name, ...figureOf(element) };
    });
  });

const portOf = (element: Varied): string =>
  (element.type === 'rfSource' ? element.port : element.plus).split('.')[0] ?? '';

function figureOf(element: Varied): Pick<Variable, 'figure' | 'value'> {
  if (element.type === 'supply') return { figure: 'volts', value: element.volts };
  if (element.type === 'battery') return { figure: 'charge', value: element.charge };
  return { figure: 'watts', value: wattsFromDbm(element.dbm) };
}

/**
 * The station with other figures, to be surveyed beside the drawn one; figures as drawn leave it as it is. A supply's
 * highest voltage moves along with the one that it is set to. A transmitter's draw above that of its idle stage goes with
 * the square root of its power: the direct current of a class B stage follows the amplitude that it makes (from memory of
 * textbooks; an estimate for other classes). An amplifier in a box of its own gets less to amplify but keeps its draw.
 */
export function whatIf(station: Station, supposed: Supposed): Station {
  const { sendShare = station.plan.sendShare } = supposed;
  const varied = station.units.reduce((before, unit) => {
    const own = ownFigures(kindOf(station, unit), unit, supposed);
    if (Object.keys(own).length === 0) return before;
    return edit(before, { type: 'updateUnit', id: unit.id, set: { overrides: { ...unit.overrides, ...own } } });
  }, station);
  return sendShare === station.plan.sendShare ? varied : edit(varied, { type: 'setPlan', set: { sendShare } });
}

/** The figures of a unit that are to be others, by `element.field`. */
function ownFigures(kind: UnitKind, unit: Unit, supposed: Supposed): Record<string, number> {
  return Object.assign(
    {},
    ...kind.elements.filter(isVaried).map((element) => {
      const { figure, value } = figureOf(element);
      const wanted = supposed[figure]?.[`${unit.id}.${element.id}`];
      return wanted === undefined || wanted === value ? {} : figuresWith(kind, element, wanted);
    }),
  );
}

function figuresWith(kind: UnitKind, element: Varied, wanted: number): Record<string, number> {
  const { id } = element;
  if (element.type === 'battery') return { [`${id}.charge`]: wanted };
  if (element.type === 'rfSource')
    return { [`${id}.dbm`]: dbmFromWatts(wanted), ...drawsWith(kind, element, wanted / wattsFromDbm(element.dbm)) };
  const { volts, maxVolts } = element;
  return { [`${id}.volts`]: wanted, ...(maxVolts !== undefined && { [`${id}.maxVolts`]: maxVolts + wanted - volts }) };
}

/** What the unit's loads take while its stage sends with this share of its power. */
function drawsWith(kind: UnitKind, source: ElementOf<'rfSource'>, powerShare: number): Record<string, number> {
  const sends = new Set(source.when?.on);
  const own: Record<string, number> = {};
  for (const load of kind.elements) {
    if (load.type !== 'load') continue;
    load.states?.forEach(({ when, amount }, i) => {
      if (!when.on?.some((actor) => sends.has(actor))) return;
      // In amperes or watts, or in siemens where the load is a resistance.
      const count = (figure: number) => (load.law === 'resistance' ? 1 / figure : figure);
      const idle = count(load.amount);
      own[`${load.id}.states.${i}.amount`] = count(idle + (count(amount) - idle) * Math.sqrt(powerShare));
    });
  }
  return own;
}
