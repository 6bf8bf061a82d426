import type { Finding } from '../rules/finding.ts';
import type { PortClass } from '../station/unit-kind.ts';

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
  readonly class: PortClass;
  readonly from: string;
  readonly to: string;
  readonly fromPlug: string;
  readonly toPlug: string;
  readonly kind: string;
  readonly lengthM: number;
  readonly fuse: string;
  /** Names of hook-ups; empty when it is in all of them. */
  readonly hookups: readonly string[];
  /** Contact by contact, `plus–shell, minus–centre`; empty when it is one to one. */
  readonly wiring: string;
  readonly adapters: string;
  readonly status: string;
  readonly note: string;
}

interface InHookup {
  readonly hookup: string;
  readonly hookupName: string;
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
export interface BatteryRow extends InHookup {
  readonly unit: string;
  readonly name: string;
  readonly ampHours: number;
  /** 1 is full. */
  readonly charge: number;
  readonly averageAmps: number;
  readonly sendingAmps: number;
  /** Until it is empty, by Peukert from its charge. */
  readonly hours: number;
  /** Until something quits in sending. */
  readonly usableHours: number;
  /** The charge at which that happens. */
  readonly quitCharge: number;
  /** The unit that quits first; its own name where its cut-off comes first; null where it can be emptied. */
  readonly quits: string | null;
  /** Ampere-hours that stay in it then. */
  readonly unusableAh: number;
  /** What the plan asks for in a day. */
  readonly planHours: number;
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

/** What stands at a port on a transmitter's way; watts and SWR in 50 Ω, ohms looking away from the transmitter. */
export interface RfStage {
  readonly port: string;
  /** The cable or unit through which the power came; empty for the transmitter's own port. */
  readonly by: string;
  /** Of what it came through, with what the SWR adds. */
  readonly lossDb: number;
  readonly matchedLossDb: number;
  /** Share by which cables of this type differ; null for units. */
  readonly tolerance: number | null;
  readonly forwardWatts: number;
  readonly reflectedWatts: number;
  readonly netWatts: number;
  readonly swr: number;
  readonly ohms: { readonly re: number; readonly im: number };
  readonly peakVolts: number;
  /** Of a tuner: whether it brings its load to 50 Ω. */
  readonly tuned: boolean | null;
}

/** A harmonic at an antenna; margins in dB below the limits, negative where it is too strong, null where none holds. */
export interface RfHarmonic {
  readonly order: number;
  readonly dbm: number;
  readonly part97MarginDb: number | null;
  readonly categoryAMarginDb: number | null;
}

/** Where a transmitter's power ends. */
export interface RfEnd {
  readonly name: string;
  readonly role: 'antenna' | 'termination' | 'receiver';
  readonly watts: number;
  readonly ohms: { readonly re: number; readonly im: number };
  /** `swr`: only the SWR is known; `beyond`: outside the antenna's table. */
  readonly doubt: 'swr' | 'beyond' | null;
  readonly harmonics: readonly RfHarmonic[];
  /** Metres to keep from an antenna on average: a caution that defers to the local rules. */
  readonly keepM: {
    readonly averageWatts: number;
    /** Nearer than this the formula of the far field says little. */
    readonly nearFieldM: number;
    readonly controlled: number | null;
    readonly uncontrolled: number | null;
  } | null;
}

/** The way of one transmitter's power while one control is pressed. */
export interface RfReport extends InHookup {
  readonly control: string;
  readonly controlName: string;
  readonly transmitter: string;
  readonly hertz: number;
  readonly watts: number;
  /** The most that it can be set to; null where its kind does not say. */
  readonly mostWatts: number | null;
  readonly stages: readonly RfStage[];
  readonly ends: readonly RfEnd[];
}
