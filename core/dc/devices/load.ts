import type { LoadPart } from '../../circuit/circuit.ts';
import { leastOhms } from '../../quantity/least-ohms.ts';
import { type Across, type Device, leakSiemens, type Revision, reluctance, type Surroundings } from './device.ts';

/** How a load is taken in a round: it draws what it wants, fades with its voltage, or next to nothing when reversed. */
type LoadState = 'fed' | 'fading' | 'none';

/** A reversed load passes this share of what it would while fading: more than a blocking diode leaks, less than matters. */
export const reversedShare = 1e-3;

/** Below this rounding alone decides which way round a voltage is. */
const noVolts = 1e-9;

/** Rounds of creeping the same way before the steps are stretched. */
const patience = 40;

/** Draws a constant current, a constant power, or what a resistance does; below its drop-out it fades away. */
export class Load implements Device {
  readonly from: number;
  readonly to: number;
  private state: LoadState = 'fed';
  private drawn: number;
  /** Conductance that it had when the round was set up. */
  private used = 0;
  private volts: number;
  /** Rounds in which its voltage went on moving the same way, negative for downwards. */
  private creeping = 0;
  /** How often it came back to be fed. */
  private returns = 0;

  constructor(
    private readonly part: LoadPart,
    private amount: number,
    private readonly around: Surroundings,
  ) {
    this.from = part.plus;
    this.to = part.minus;
    this.volts = Math.max(part.spec.minV, 1);
    this.drawn = part.spec.law === 'power' ? amount / this.volts : amount;
  }

  isFed(): boolean {
    return this.state === 'fed';
  }

  /** Sets another amount: a converter's input follows its output. */
  demand(amount: number) {
    this.amount = amount;
  }

  conductance(): number {
    this.used = this.wanted();
    return this.used + leakSiemens;
  }

  extra(): number {
    return this.isCurrent() ? this.drawn : 0;
  }

  revise(across: Across): Revision {
    const volts = across(this.from, this.to);
    this.volts = this.ahead(volts);
    let stale = this.move(volts);
    const before = this.drawn;
    const constant = this.part.spec.law === 'power' && this.state === 'fed';
    this.drawn = constant ? this.amount / Math.max(volts, this.part.dropOutV, 1e-3) : this.amount;
    const size = Math.max(1, Math.abs(this.drawn));
    // A load fed by a limiting supply is a conductance that follows its voltage until it draws what it wants.
    if (
      this.state === 'fed' &&
      !this.isCurrent() &&
      this.part.spec.law !== 'resistance' &&
      Math.abs(this.used * volts - this.drawn) > 1e-12 * size
    )
      stale = true;
    return { stale, error: Math.abs(this.drawn - before) / size };
  }

  /**
   * The voltage to try next, volts. A supply that limits just below what the load wants lets it creep down by a little
   * each round; after some rounds of that the steps are stretched, and a step back ends the stretching.
   */
  private ahead(volts: number): number {
    const step = volts - this.volts;
    const way = Math.sign(step);
    this.creeping = way === Math.sign(this.creeping) ? this.creeping + way : way;
    const stretch = 2 ** Math.min(10, Math.max(0, Math.abs(this.creeping) - patience)) - 1;
    return volts + stretch * step;
  }

  amps(across: Across): number {
    return this.isCurrent() ? this.drawn : this.used * across(this.from, this.to);
  }

  private isCurrent(): boolean {
    return this.part.spec.law !== 'resistance' && this.state === 'fed' && !this.isLimited();
  }

  private isLimited(): boolean {
    return this.around.limited.has(this.around.island[this.from] as number);
  }

  private wanted(): number {
    const { law } = this.part.spec;
    if (this.amount === 0) return 0;
    if (law === 'resistance') return (this.state === 'none' ? reversedShare : 1) / Math.max(this.amount, leastOhms);
    if (this.isCurrent()) return 0;
    if (this.state === 'none') return reversedShare * this.fadingSiemens(Math.max(this.part.dropOutV, 1e-3));
    const v = Math.max(this.part.dropOutV, this.state === 'fed' ? this.volts : 0, 1e-3);
    return this.fadingSiemens(v);
  }

  private fadingSiemens(v: number): number {
    return this.part.spec.law === 'power' ? this.amount / (v * v) : this.amount / v;
  }

  /** True where it moved between fed, fading and nothing. */
  private move(volts: number): boolean {
    const { dropOutV } = this.part;
    let next = this.state;
    if (this.state === 'fed' && volts < dropOutV) next = 'fading';
    else if (this.state === 'fading')
      next = volts >= dropOutV * (1 + reluctance(this.returns)) ? 'fed' : volts < -noVolts ? 'none' : 'fading';
    else if (this.state === 'none' && volts > noVolts) next = 'fading';
    if (next === this.state) return false;
    if (next === 'fed') this.returns++;
    this.state = next;
    return true;
  }
}
