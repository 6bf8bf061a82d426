import type { Finding } from '../rules/finding.ts';
import type { BatteryLife } from '../rules/power/battery-life.ts';
import type { PortClass } from '../station/unit-kind.ts';
import type { RingColour } from './cables/rings.ts';
import type { InHookup } from './in-hookup.ts';
import type { RfReport } from './rf-report.ts';

/** Everything that a screen or a printed sheet shows of a survey; plain data that can cross to another thread. */
export interface SurveyReport {
  /** Causes before consequences, worst first; folded ones carry `causedBy`. */
  readonly findings: readonly Finding[];
  readonly cables: readonly CableRow[];
  readonly budget: Budget;
  /** One per hook-up and control. */
  readonly keydowns: readonly KeydownReport[];
  /** One per hook-up, control and transmitter. */
  readonly rf: readonly RfReport[];
  readonly audio: readonly AudioRow[];
  /** For each hook-up one of receive, and one of sending for each control with what is otherwise than in receive. */
  readonly overlays: readonly Overlay[];
}

/** A line of the cable list, in words. */
export interface CableRow {
  readonly id: string;
  readonly number: string;
  /** It keeps its number when the cables are numbered anew. */
  readonly numberLocked: boolean;
  readonly class: PortClass;
  readonly from: string;
  readonly to: string;
  readonly fromPlug: string;
  readonly toPlug: string;
  readonly kind: string;
  /** `2 × AWG 14`, `1 × 0.14 mm², screen`. */
  readonly conductors: string;
  readonly lengthM: number;
  readonly fuse: string;
  /** Colour rings at both ends, from the plug on, by the codes of IEC 60757. */
  readonly rings: readonly RingColour[];
  /** Names of hook-ups; empty when it is in all of them. */
  readonly hookups: readonly string[];
  /** Contact by contact, `plus–shell, minus–centre`; empty when it is one to one. */
  readonly wiring: string;
  readonly adapters: string;
  readonly status: string;
  readonly note: string;
}

/** What one supply gives in one hook-up. Amperes and volts at its terminals; average by the plan. */
export interface SupplyRow extends InHookup {
  readonly unit: string;
  readonly element: string;
  readonly name: string;
  readonly volts: number;
  readonly receiveAmps: number;
  readonly sendingAmps: number;
  readonly averageAmps: number;
  readonly ratedAmps: number;
  readonly peakAmps: number;
  /** Rated less sending. */
  readonly marginAmps: number;
  readonly receiveVolts: number;
  readonly sendingVolts: number;
}

/** What one load gets in one hook-up. */
export interface LoadRow extends InHookup {
  readonly unit: string;
  readonly element: string;
  readonly name: string;
  readonly port: string;
  readonly receiveVolts: number;
  readonly sendingVolts: number;
  readonly receiveAmps: number;
  readonly sendingAmps: number;
  readonly averageAmps: number;
  readonly minV: number;
  readonly maxV: number;
  /** From the supply's terminals to the load, sending. */
  readonly dropVolts: number;
}

/** What one fuse carries in one hook-up, and the thinnest wire behind it. */
export interface FuseRow extends InHookup {
  readonly unit?: string;
  readonly cable?: string;
  readonly element?: string;
  readonly name: string;
  readonly ratedAmps: number;
  readonly receiveAmps: number;
  readonly sendingAmps: number;
  /** Sending current as a share of the rating. */
  readonly share: number;
  readonly guards: string;
  readonly wireLimitAmps: number | null;
  /** The table behind the wire's limit; empty where there is none. */
  readonly wireLimitSource: string;
  /** The most that it carries at any moment. */
  readonly peakAmps: number;
  /** Seconds within which it opens at its peak: no sooner, no later; `to` is null where it may hold. Null where it holds. */
  readonly opensInS: { readonly from: number; readonly to: number | null } | null;
  /** Resistance as the DC solution has it, and at its peak current. */
  readonly coldOhms: number;
  readonly hotOhms: number;
  /** The largest current that it can break. */
  readonly breakingAmps: number;
  /** What a short just behind it would drive through it; null for a fuse that no plus reaches. */
  readonly shortAmps: number | null;
}

/** What the live core of one power cable carries in one hook-up. */
export interface WireRow extends InHookup {
  readonly cable: string;
  readonly number: string;
  readonly wire: string;
  readonly receiveAmps: number;
  readonly sendingAmps: number;
  readonly limitAmps: number | null;
  /** The table behind the limit, and what heat and bundling took from it; empty where there is none. */
  readonly limitSource: string;
  /** Both conductors together, sending. */
  readonly dropVolts: number;
}

/** How long one battery lasts in one hook-up, by the plan. */
export interface BatteryRow extends InHookup, Omit<BatteryLife, 'quits'> {
  readonly unit: string;
  readonly name: string;
  /** The unit that quits first, by name; its own where its cut-off comes first; null where it can be emptied. */
  readonly quits: string | null;
}

export interface Budget {
  readonly supplies: readonly SupplyRow[];
  readonly loads: readonly LoadRow[];
  readonly fuses: readonly FuseRow[];
  readonly wires: readonly WireRow[];
  readonly batteries: readonly BatteryRow[];
}

export type LaneKind = 'operator' | 'keys' | 'changesOver' | 'mutes' | 'sends' | 'other';

export interface Lane {
  readonly unit: string;
  readonly actor: string;
  readonly name: string;
  readonly kind: LaneKind;
  /** `[from, to]` in milliseconds from the press. */
  readonly spans: readonly (readonly [number, number])[];
}

export interface KeydownEvent {
  readonly atMs: number;
  readonly unit: string;
  readonly actor: string;
  readonly name: string;
  readonly on: boolean;
  /** For so long after it its contacts still open and close; 0 where they don't. */
  readonly bounceMs: number;
}

/** One control, or all together, pressed at 0 and let go. */
export interface KeydownReport extends InHookup {
  /** `unit.actor`; several pressed together are joined by `+`. */
  readonly control: string;
  readonly controlName: string;
  readonly releasedMs: number;
  readonly endMs: number;
  readonly settled: boolean;
  readonly lanes: readonly Lane[];
  readonly events: readonly KeydownEvent[];
  readonly rf: { readonly fromMs: number; readonly toMs: number; readonly watts: number } | null;
  readonly ditMs: number;
  readonly listening: readonly ListeningRow[];
}

/** What one receiver that a press makes deaf hears of it. */
export interface ListeningRow {
  readonly unit: string;
  readonly name: string;
  readonly deafMs: number;
  readonly againMs: number;
  /** The shortest pause in which it is heard again. */
  readonly pause: 'dit' | 'letter' | 'word' | 'none';
  /** The station's own RF at its input while it is not muted. */
  readonly unmuted: { readonly ms: number; readonly dbm: number } | null;
}

export interface UnitReading {
  readonly powered: boolean;
  /** Labels of the actors that are on. */
  readonly active: readonly string[];
  readonly sending: boolean;
  readonly supplyAmps?: number;
  readonly supplyVolts?: number;
}

export interface CableReading {
  /** Live against return, DC; null where nothing fixes it. */
  readonly volts: number | null;
  readonly amps: number;
  readonly returnAmps: number;
  readonly dbm: number | null;
  readonly watts: number | null;
  /** On a selected path, not only by a leak. */
  readonly carriesRf: boolean;
}

export interface PortReading {
  readonly volts: number | null;
  readonly amps: number;
  readonly dbm: number | null;
}

/** What is everywhere at one moment of one hook-up. */
export interface Overlay {
  readonly hookup: string;
  /** Empty for receive, which is the same for all. */
  readonly control: string;
  readonly moment: 'receive' | 'sending';
  readonly units: Readonly<Record<string, UnitReading>>;
  readonly cables: Readonly<Record<string, CableReading>>;
  /** By `unit.port`. */
  readonly ports: Readonly<Record<string, PortReading>>;
}

/** What one audio output makes at one input, in receive or in sending. */
export interface AudioRow extends InHookup {
  readonly moment: 'receive' | 'sending';
  readonly source: string;
  readonly sink: string;
  /** Rms volts of the output with nothing connected, at the most that it gives. */
  readonly openVolts: number;
  readonly sourceOhms: number;
  /** Of all that hangs on the output. */
  readonly loadOhms: number;
  /** Rms volts at the input. */
  readonly volts: number;
  readonly dbu: number;
  /** What the input is made for, and from where it distorts; null where it does not say. */
  readonly fullVolts: number | null;
  readonly overloadVolts: number | null;
  /** Direct voltage on the input's contact. */
  readonly dcVolts: number;
}
