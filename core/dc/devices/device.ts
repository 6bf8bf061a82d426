/** Volts of one node against another after a round. */
export type Across = (a: number, b: number) => number;

/** What a round showed: whether conductances have to be set up anew, and how far a current was off. */
export interface Revision {
  readonly stale: boolean;
  readonly error: number;
}

/** What all devices of a network know of each other: islands in which a supply holds its limit. */
export interface Surroundings {
  readonly island: Int32Array;
  readonly limited: Set<number>;
}

/** Something that is not a plain resistance: in each round a conductance and a current, set right by what comes out. */
export interface Device {
  /** Current counts from here to there through the device. */
  readonly from: number;
  readonly to: number;
  /** Siemens in the round to come. */
  conductance(): number;
  /** Amperes in the round to come beyond conductance times volts. */
  extra(): number;
  /** Takes in what the round showed. */
  revise(across: Across): Revision;
  /** Amperes as they are told of its part. */
  amps(across: Across): number;
}

/** What keeps a node with nothing but a switched-off device on it from floating off. */
export const leakSiemens = 1e-12;

export const unchanged: Revision = { stale: false, error: 0 };

/**
 * Share by which a device that has changed its state to and fro has to be past its threshold to change back once more:
 * nothing at first, doubled with each return, a fiftieth at most. So a network in which two devices drive each other to
 * and fro finds a balance.
 */
export const reluctance = (returns: number): number => (returns < 4 ? 0 : Math.min(0.02, 1e-9 * 2 ** returns));
