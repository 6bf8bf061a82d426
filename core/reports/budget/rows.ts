import type { Place } from '../../station/place.ts';
import type { BatteryLife } from '../../trial/power/battery-life.ts';
import type { InHookup } from '../in-hookup.ts';

/** Amperes in one place of a station in one hook-up. */
export interface DrawnAmps {
  readonly receiveAmps: number;
  /** In the sending moment that draws most from all supplies together. */
  readonly sendingAmps: number;
  /** By the plan. */
  readonly averageAmps: number;
  /** The most at any moment, while changing over included. */
  readonly peakAmps: number;
}

/** What one supply gives in one hook-up. Amperes and volts at its terminals. */
export interface SupplyRow extends InHookup, DrawnAmps {
  readonly unit: string;
  readonly element: string;
  readonly name: string;
  readonly volts: number;
  readonly ratedAmps: number;
  /** What it can give for a short while. */
  readonly ratedPeakAmps: number;
  /** Rated less sending. */
  readonly marginAmps: number;
  readonly receiveVolts: number;
  readonly sendingVolts: number;
}

/** What one load gets in one hook-up. */
export interface LoadRow extends InHookup, DrawnAmps {
  readonly unit: string;
  readonly element: string;
  readonly name: string;
  readonly port: string;
  readonly receiveVolts: number;
  readonly sendingVolts: number;
  readonly minV: number;
  readonly maxV: number;
  /** From the supply's terminals to the load, sending. */
  readonly dropVolts: number;
}

/**
 * A lead that leaves a supply or an outlet, or a fuse before several of them, and what hangs behind it in one hook-up.
 * Each comes after the one that it hangs behind.
 */
export interface BranchRow extends InHookup, DrawnAmps {
  /** The outlet, or where the fuse sits. */
  readonly name: string;
  readonly unit: string;
  /** The lead, with its number; empty for a fuse before several leads. */
  readonly cable: string;
  readonly number: string;
  readonly supply: string;
  /** How many branches it hangs behind. */
  readonly depth: number;
  /** Between the branch before and the far end of its lead. */
  readonly fuses: readonly { readonly name: string; readonly ratedAmps: number }[];
  /** Names of the units that it feeds. */
  readonly loads: readonly string[];
  /** What its loads draw while sending, with what they push into closed lines. */
  readonly drawnAmps: number;
}

export type WayPartKind = 'lead' | 'contact' | 'fuse' | 'inside' | 'diode';

/** One thing on the way of a load's current, while sending. */
export interface WayPart {
  readonly kind: WayPartKind;
  readonly name: string;
  readonly at: Place;
  /** On the way back to the supply's minus. */
  readonly back: boolean;
  /** Towards the load on the way out, towards the supply on the way back. */
  readonly amps: number;
  readonly dropVolts: number;
}

/** From a supply's terminals to a load and back, while sending: what each part takes of the voltage. */
export interface WayRow extends InHookup {
  readonly unit: string;
  readonly element: string;
  readonly name: string;
  readonly port: string;
  readonly supply: string;
  readonly supplyVolts: number;
  readonly loadVolts: number;
  readonly minV: number;
  /** Supply less load: what the parts drop together. */
  readonly dropVolts: number;
  /** In order: from the supply's plus to the load, and from the load back to the supply's minus. */
  readonly parts: readonly WayPart[];
}

/** What one fuse carries in one hook-up, and the thinnest wire behind it. */
export interface FuseRow extends InHookup, DrawnAmps {
  readonly unit?: string;
  readonly cable?: string;
  readonly element?: string;
  readonly name: string;
  readonly ratedAmps: number;
  /** Sending current as a share of the rating. */
  readonly share: number;
  readonly guards: string;
  readonly wireLimitAmps: number | null;
  /** The table behind the wire's limit; empty where there is none. */
  readonly wireLimitSource: string;
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
export interface WireRow extends InHookup, DrawnAmps {
  readonly cable: string;
  readonly number: string;
  readonly wire: string;
  readonly limitAmps: number | null;
  /** The table behind the limit, and what heat and bundling took from it; empty where there is none. */
  readonly limitSource: string;
  /** Both conductors together, sending. */
  readonly dropVolts: number;
}

/** A battery after some hours of operating by the plan; volts at its terminals. */
export interface BatteryPoint {
  readonly hours: number;
  /** 1 is full. */
  readonly charge: number;
  readonly receiveVolts: number;
  readonly sendingVolts: number;
}

/** How long one battery lasts in one hook-up, by the plan. */
export interface BatteryRow extends InHookup, Omit<BatteryLife, 'quits'> {
  readonly unit: string;
  readonly name: string;
  readonly peakAmps: number;
  readonly cutOffV: number;
  /** The unit that quits first, by name; its own where its cut-off comes first; null where it can be emptied. */
  readonly quits: string | null;
  /** From now until something quits; empty where that is never. */
  readonly course: readonly BatteryPoint[];
}

export interface Budget {
  readonly supplies: readonly SupplyRow[];
  readonly loads: readonly LoadRow[];
  readonly branches: readonly BranchRow[];
  readonly ways: readonly WayRow[];
  readonly fuses: readonly FuseRow[];
  readonly wires: readonly WireRow[];
  readonly batteries: readonly BatteryRow[];
}
