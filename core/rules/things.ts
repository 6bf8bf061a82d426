import type { CircuitActor, CircuitPart, LoadPart, Origin, Resistor, RfLoad, SupplyPart } from '../circuit/circuit.ts';
import type { KeyDown } from '../keydown/key-down.ts';
import type { Cable, Hookup, Unit } from '../station/schema/schema.ts';
import type { Port } from '../station/schema/unit-kind.ts';
import type { AudioInput, AudioOutput } from '../trial/audio-ends.ts';
import type { EndAtPort } from '../trial/ends-at-ports.ts';
import type { JointPart } from '../trial/own-parts.ts';
import type { FusePart, Numbered } from '../trial/parts.ts';
import type { RfRegion } from '../trial/rf/regions.ts';
import type { SendingChain } from '../trial/rf/sending-chains.ts';

/** A conductor of a cable. */
export type WirePart = Resistor & { readonly origin: Extract<Origin, { type: 'wire' }> };

/** What a rule can look at, one at a time, in one hook-up. */
export interface Things {
  readonly hookup: Hookup;
  readonly unit: Unit;
  readonly port: { readonly unit: Unit; readonly port: Port };
  readonly load: Numbered<LoadPart>;
  readonly supply: Numbered<SupplyPart>;
  readonly fuse: Numbered<FusePart>;
  /** A part of a unit's own, of whatever kind. */
  readonly element: Numbered<CircuitPart & { readonly origin: Extract<Origin, { type: 'element' }> }>;
  readonly actor: CircuitActor;
  readonly rfLoad: RfLoad;
  /** Of audio. */
  readonly output: AudioOutput;
  readonly input: AudioInput;
  readonly cable: Cable;
  readonly end: EndAtPort;
  readonly wire: Numbered<WirePart>;
  readonly joint: Numbered<JointPart>;
  /** Ports that RF can go between, whether or not anything there sends. */
  readonly anyRegion: RfRegion;
  /** One that has a source. */
  readonly region: RfRegion;
  readonly chain: SendingChain;
  readonly press: KeyDown;
}

export type ThingName = keyof Things;
