import type { DiodePart } from '../../circuit/circuit.ts';
import { type Across, type Device, leakSiemens, type Revision } from './device.ts';

/** The exponential law of a junction with its series resistance, taken as its tangent in each round. */
export class Diode implements Device {
  readonly from: number;
  readonly to: number;
  /** Volts at which the tangent touches. */
  private at = 0;
  private touched = { amps: 0, siemens: 0 };

  constructor(private readonly part: DiodePart) {
    this.from = part.anode;
    this.to = part.cathode;
    this.touched = this.law(0);
  }

  conductance = (): number => this.touched.siemens + leakSiemens;
  extra = (): number => this.touched.amps - this.touched.siemens * this.at;

  revise(across: Across): Revision {
    const volts = across(this.from, this.to);
    const told = this.touched.amps + this.touched.siemens * (volts - this.at);
    const next = this.limited(volts);
    const law = this.law(next);
    const error = Math.abs(law.amps - told) / Math.max(1, Math.abs(law.amps)) + (next === volts ? 0 : 1);
    // The matrix holds the old tangent until it is set up anew; a new one beside it would be neither.
    if (error <= 2e-13) return { stale: false, error };
    this.touched = law;
    this.at = next;
    return { stale: true, error };
  }

  amps = (across: Across): number => this.law(across(this.from, this.to)).amps;

  /** A step up the exponential is taken on its logarithm, or a round would fly off beyond all numbers. */
  private limited(volts: number): number {
    const { slopeVolts, saturationAmps, ohms } = this.part;
    const knee = slopeVolts * Math.log(slopeVolts / (Math.SQRT2 * saturationAmps));
    const step = volts - this.at;
    if (volts <= knee || Math.abs(step) <= 2 * slopeVolts || this.touched.siemens * ohms > 0.5) return volts;
    if (this.at <= 0) return Math.min(volts, knee);
    const grown = 1 + step / slopeVolts;
    return grown > 0 ? this.at + slopeVolts * Math.log(grown) : knee;
  }

  /** Amperes and slope at a voltage across junction and resistance, by Newton on the junction's own voltage. */
  private law(volts: number): { amps: number; siemens: number } {
    const { saturationAmps, slopeVolts, ohms } = this.part;
    const exp = (junction: number) => saturationAmps * Math.exp(Math.min(junction / slopeVolts, 300));
    if (ohms === 0 || volts <= 0) {
      const grown = exp(volts);
      return { amps: grown - saturationAmps, siemens: grown / slopeVolts };
    }
    // From above the solution Newton comes down steadily: the function is convex in the junction's voltage.
    let junction = Math.min(volts, slopeVolts * Math.log1p(volts / ohms / saturationAmps));
    for (let i = 0; i < 60; i++) {
      const grown = exp(junction);
      const off = junction + ohms * (grown - saturationAmps) - volts;
      const step = off / (1 + (ohms * grown) / slopeVolts);
      junction -= step;
      if (Math.abs(step) <= 1e-15 * Math.max(1, Math.abs(junction))) break;
    }
    const slope = exp(junction) / slopeVolts;
    return { amps: exp(junction) - saturationAmps, siemens: slope / (1 + slope * ohms) };
  }
}
