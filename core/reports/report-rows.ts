import type { Finding } from '../rules/finding.ts';
import type { RingColour } from '../station/schema/ring-colour.ts';
import type { PortClass } from '../station/schema/unit-kind.ts';
import type { Budget } from './budget/rows.ts';
import type { InHookup } from './in-hookup.ts';
import type { RfReport } from './rf/rf-report.ts';

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
  /** The rings of the jacks at both ends, which the plugs carry too. */
  readonly fromRing?: RingColour;
  readonly toRing?: RingColour;
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
  /** Out of all its outlets together; volts are those of the first. */
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
