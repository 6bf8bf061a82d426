import type { PullUpPart } from '../../circuit/circuit.ts';
import { leastOhms } from '../../quantity/least-ohms.ts';
import { type Across, type Device, type Revision, unchanged } from './device.ts';

/** A voltage through a resistor onto a contact. */
export class PullUp implements Device {
  readonly from: number;
  readonly to: number;
  private readonly ohms: number;

  constructor(private readonly part: PullUpPart) {
    this.from = part.node;
    this.to = part.reference;
    this.ohms = Math.max(part.spec.ohms, leastOhms);
  }

  conductance = (): number => 1 / this.ohms;
  extra = (): number => -this.part.spec.volts / this.ohms;
  revise = (): Revision => unchanged;
  amps = (across: Across): number => (this.part.spec.volts - across(this.from, this.to)) / this.ohms;
}

/** The regulator behind a pull-up: it takes from the unit's plus what the pull-up gives. */
export class PullUpFeed implements Device {
  readonly from: number;
  readonly to: number;
  private drawn = 0;

  constructor(
    from: number,
    private readonly pullUp: PullUp,
  ) {
    this.from = from;
    this.to = pullUp.to;
  }

  conductance = (): number => 0;
  extra = (): number => this.drawn;

  revise(across: Across): Revision {
    const before = this.drawn;
    this.drawn = this.pullUp.amps(across);
    return { stale: false, error: Math.abs(this.drawn - before) };
  }

  amps = (): number => this.drawn;
}
