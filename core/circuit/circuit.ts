import type { ElementOf, FuseFamily } from '../station/schema/unit-kind.ts';
import type { NumberOf } from './names.ts';
import { Reads } from './reads.ts';

/** Where a part of the circuit comes from in the drawing. */
export type Origin =
  | { readonly type: 'element'; readonly unit: string; readonly element: string }
  | { readonly type: 'chassis'; readonly unit: string; readonly contact: string }
  | {
      readonly type: 'mate';
      readonly cable: string;
      readonly end: 'a' | 'b';
      readonly unit: string;
      readonly port: string;
      readonly contact: string;
    }
  | {
      readonly type: 'wire';
      readonly cable: string;
      readonly row: number;
      readonly role: 'live' | 'second' | 'return';
      /** Of this piece: a fuse in the cable has one before and one behind it. */
      readonly lengthM: number;
    }
  | { readonly type: 'cableFuse'; readonly cable: string };

/** Actors that must be on or off for a part to be in force; empty means always. */
export type Gate = readonly { readonly actor: number; readonly on: boolean }[];

/** No actor ever fulfils it. */
export const never: Gate = [{ actor: -1, on: true }];

interface Part {
  readonly gate: Gate;
  readonly origin: Origin;
}

/** Nodes are numbers, indices into `Circuit.nodes`. */
export interface Resistor extends Part {
  readonly kind: 'resistor';
  readonly a: number;
  readonly b: number;
  readonly ohms: number;
  readonly fuse?: { readonly ratedAmps: number; readonly family: FuseFamily; readonly breakingAmps: number };
  /** A resistance meant to be one (a termination), not a way that metal joins two contacts. */
  readonly lumped?: boolean;
}

export interface SupplyPart extends Part {
  readonly kind: 'supply';
  readonly plus: number;
  readonly minus: number;
  readonly spec: ElementOf<'supply'>;
  /** It takes current too, as a battery does; others block it. */
  readonly sinks: boolean;
  readonly battery?: ElementOf<'battery'>;
  /** The output of a converter: the input of the same name pays for what it gives. */
  readonly converter?: Converter;
}

/** What joins the two halves of a converter. */
export interface Converter {
  /** `unit.element` */
  readonly name: string;
  readonly efficiency: number;
  readonly idleWatts: number;
}

/** I = saturation · (exp(U / slope) − 1) in a junction, in series with ohms. */
export interface DiodePart extends Part {
  readonly kind: 'diode';
  readonly anode: number;
  readonly cathode: number;
  readonly saturationAmps: number;
  readonly slopeVolts: number;
  readonly ohms: number;
}

export interface LoadPart extends Part {
  readonly kind: 'load';
  readonly plus: number;
  readonly minus: number;
  readonly spec: ElementOf<'load'>;
  readonly states: readonly { readonly gate: Gate; readonly amount: number }[];
  readonly dropOutV: number;
  /** The input of a converter. */
  readonly converter?: Converter;
}

/** A voltage through a resistor onto a contact; its current comes out of `fedFrom` (a load's plus) where that is known. */
export interface PullUpPart extends Part {
  readonly kind: 'pullUp';
  readonly node: number;
  readonly reference: number;
  readonly fedFrom: number | null;
  readonly spec: ElementOf<'pullUp'>;
}

export type CircuitPart = Resistor | SupplyPart | LoadPart | DiodePart | PullUpPart;

export type CompiledFeel =
  | { readonly type: 'operator'; readonly label: string }
  | {
      readonly type: 'voltageBelow' | 'voltageAbove';
      readonly node: number;
      readonly reference: number;
      readonly volts: number;
    }
  | { readonly type: 'currentAbove'; readonly part: number; readonly amps: number }
  | { readonly type: 'rfAbove'; readonly port: number; readonly dbm: number }
  | { readonly type: 'actor'; readonly actor: number }
  /** The unit has its working voltage at one of these loads. */
  | { readonly type: 'powered'; readonly loads: readonly number[] };

export interface CircuitActor {
  /** `unit.actor`; a unit's power is its actor `powered`. */
  readonly key: string;
  readonly unit: string;
  readonly id: string;
  readonly label: string;
  readonly does: 'mutes' | 'sends' | 'changesOver' | 'keys' | 'powered' | undefined;
  /** On when it feels any of these. */
  readonly feels: readonly CompiledFeel[];
  readonly operateMs: number;
  readonly releaseMs: number;
  readonly bounceMs: number;
  /** The actor that stands for its unit's power, or null where it needs none. */
  readonly power: number | null;
  /** It is on, or off, whatever it feels: a relay that sticks. */
  readonly stuck?: boolean;
}

export type RfEdgeOrigin =
  | { readonly type: 'element'; readonly unit: string; readonly element: string }
  | { readonly type: 'cable'; readonly cable: string }
  /** From antenna to antenna through the air. */
  | { readonly type: 'coupling' };

/** A length of coax, as far as RF goes. */
export interface RfLine {
  readonly z0: number;
  readonly velocityFactor: number;
  readonly lossDbPer100m: number;
  readonly lengthM: number;
  /** Share by which cables of this type differ from the printed loss. */
  readonly tolerance: number;
  /** Peak volts that it stands. */
  readonly maxVolts: number | null;
}

/** A way for RF between two ports (indices into `RfNet.ports`). */
export interface RfEdge {
  readonly a: number;
  readonly b: number;
  /** Negative for a gain. */
  readonly lossDb: number;
  readonly isolationDb: number | null;
  readonly oneWay: boolean;
  readonly saturationDbm: number | null;
  readonly maxWatts: number | null;
  readonly gate: Gate;
  readonly origin: RfEdgeOrigin;
  /** Of a cable that is coax. */
  readonly line?: RfLine;
  /** Of a unit's element. */
  readonly spec?: ElementOf<'rfPath'> | ElementOf<'matcher'>;
}

export interface RfSource {
  readonly port: number;
  readonly unit: string;
  readonly gate: Gate;
  readonly spec: ElementOf<'rfSource'>;
}

export interface RfLoad {
  readonly port: number;
  readonly unit: string;
  readonly gate: Gate;
  readonly spec: ElementOf<'rfLoad'>;
}

export interface RfNet {
  /** The frequency of the plan. */
  readonly hertz: number;
  /** `unit.port` */
  readonly ports: readonly string[];
  readonly edges: readonly RfEdge[];
  readonly sources: readonly RfSource[];
  readonly loads: readonly RfLoad[];
}

/** Where a signal leaves or enters a unit: what stands between a node and its reference. */
export interface SignalEnd<T extends 'audioSource' | 'audioLoad' | 'dataEnd'> {
  readonly node: number;
  readonly reference: number;
  readonly unit: string;
  readonly gate: Gate;
  readonly spec: ElementOf<T>;
}

export interface Signals {
  readonly sources: readonly SignalEnd<'audioSource'>[];
  readonly loads: readonly SignalEnd<'audioLoad'>[];
  readonly data: readonly SignalEnd<'dataEnd'>[];
}

/** A contact or an RF port of a unit, by its name. */
export interface Elsewhere {
  readonly unit: string;
  readonly name: string;
}

/** What a unit or a cable brings into a circuit, its contacts apart. */
interface Contents {
  readonly parts: readonly CircuitPart[];
  readonly actors: readonly CircuitActor[];
  readonly rfEdges: readonly RfEdge[];
  readonly rfSources: readonly RfSource[];
  readonly rfLoads: readonly RfLoad[];
  readonly sources: readonly SignalEnd<'audioSource'>[];
  readonly loads: readonly SignalEnd<'audioLoad'>[];
  readonly data: readonly SignalEnd<'dataEnd'>[];
}

/**
 * What a unit or a cable is in a hook-up, contact by contact, in numbers of its own: its first node is 0, so are its first
 * part, actor and RF port; below zero stand contacts and ports of other units, -1 for the first of `nodesElsewhere`.
 */
export interface Fragment extends Contents {
  /** `unit tx`, `cable c1`, `couplings`. */
  readonly name: string;
  /** What it was made from: of the same things comes the same fragment. */
  readonly from: readonly unknown[];
  /** Names of its nodes, `tx.power.plus`, and their numbers. */
  readonly nodes: readonly string[];
  readonly nodeOf: ReadonlyMap<string, number>;
  readonly rfPorts: readonly string[];
  readonly rfPortOf: ReadonlyMap<string, number>;
  readonly nodesElsewhere: readonly Elsewhere[];
  readonly portsElsewhere: readonly Elsewhere[];
}

/** The first numbers of a fragment in its circuit. */
export interface Numbers {
  readonly node: number;
  readonly part: number;
  readonly actor: number;
  readonly rfPort: number;
}

/** A fragment in the numbers of a circuit. */
export interface Placed extends Contents {
  readonly fragment: Fragment;
  readonly first: Numbers;
  /** The circuit's numbers of what the fragment has elsewhere. */
  readonly nodesElsewhere: readonly number[];
  readonly portsElsewhere: readonly number[];
}

/** A station in one hook-up, contact by contact. */
export interface Circuit {
  /** The fragments that it was put together from, by name. */
  readonly placed: ReadonlyMap<string, Placed>;
  /** Told what is asked of the circuit and its solutions. */
  readonly reads: Reads;
  readonly nodes: readonly string[];
  readonly nodeOf: NumberOf;
  readonly parts: readonly CircuitPart[];
  readonly actors: readonly CircuitActor[];
  readonly actorOf: NumberOf;
  readonly rf: RfNet;
  readonly signals: Signals;
}

/** No contact, no part. */
export const emptyCircuit: Circuit = {
  placed: new Map(),
  reads: new Reads(),
  nodes: [],
  nodeOf: new Map(),
  parts: [],
  actors: [],
  actorOf: new Map(),
  rf: { hertz: 0, ports: [], edges: [], sources: [], loads: [] },
  signals: { sources: [], loads: [], data: [] },
};

/** Which actors are on, by index. */
export type ActorStates = Uint8Array;

/** Whether a gate holds with these actors on. */
export function isOpenGate(gate: Gate, on: ActorStates): boolean {
  for (const { actor, on: wanted } of gate) if ((on[actor] === 1) !== wanted) return false;
  return true;
}

/** Above this a resistance is not a conductor any more. */
const conductorOhms = 20;

/** Whether a part is a way that metal joins two contacts; loads, pull-ups and terminations are not. */
export const isMetal = (part: CircuitPart): part is Resistor =>
  part.kind === 'resistor' && !part.lumped && part.ohms <= conductorOhms;
