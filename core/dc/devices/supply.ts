import type { SupplyPart } from '../../circuit/circuit.ts';
import { leastOhms } from '../../quantity/least-ohms.ts';
import {
  type Across,
  type Device,
  leakSiemens,
  type Revision,
  reluctance,
  type Surroundings,
  unchanged,
} from './device.ts';
import type { Load } from './load.ts';

/** `idle`: something else holds the voltage above its own; `off`: it has shut down, or its input is missing. */
export type SupplyMode = 'regulating' | 'limiting' | 'off' | 'idle';

/** Holds its voltage behind its source resistance, up to its limit. */
export class Supply implements Device {
  mode: SupplyMode = 'regulating';
  readonly from: number;
  readonly to: number;
  /** The input that pays for a converter's output. */
  input: Load | null = null;
  private readonly ohms: number;
  /** How often it came back to regulate. */
  private returns = 0;

  constructor(
    private readonly part: SupplyPart,
    private readonly around: Surroundings,
  ) {
    this.from = part.plus;
    this.to = part.minus;
    this.ohms = Math.max(part.spec.sourceOhms, leastOhms);
  }

  conductance(): number {
    return this.mode === 'regulating' ? 1 / this.ohms : leakSiemens;
  }

  extra(): number {
    if (this.mode === 'regulating') return -this.part.spec.volts / this.ohms;
    return this.mode === 'limiting' ? -this.part.spec.peakAmps : 0;
  }

  revise(across: Across): Revision {
    const { spec, sinks } = this.part;
    const volts = across(this.from, this.to);
    const amps = (spec.volts - volts) / this.ohms;
    let next = this.mode;
    if (this.mode === 'regulating' && amps > spec.peakAmps && spec.beyond !== 'sags')
      next = spec.beyond === 'limits' ? 'limiting' : 'off';
    else if (this.mode === 'regulating' && !sinks && amps < -1e-9) next = 'idle';
    else if (this.mode === 'limiting' && amps < spec.peakAmps * (1 - 1e-9 - reluctance(this.returns)))
      next = 'regulating';
    else if (this.mode === 'idle' && volts < spec.volts) next = 'regulating';
    if (this.input) next = this.payFor(next, across);
    if (next === this.mode) return unchanged;
    if (next === 'regulating') this.returns++;
    this.mode = next;
    this.markIsland();
    return { stale: true, error: 1 };
  }

  amps(across: Across): number {
    if (this.mode === 'limiting') return this.part.spec.peakAmps;
    return this.mode === 'regulating' ? (this.part.spec.volts - across(this.from, this.to)) / this.ohms : 0;
  }

  /** Sets the input's demand by what the output gives; a converter whose input has gone stays off. */
  private payFor(mode: SupplyMode, across: Across): SupplyMode {
    const { converter, spec } = this.part;
    if (!this.input || !converter) return mode;
    if (!this.input.isFed()) return 'off';
    const watts = mode === 'off' ? 0 : this.amps(across) * spec.volts;
    this.input.demand(converter.idleWatts + watts / converter.efficiency);
    return mode;
  }

  private markIsland() {
    const island = this.around.island[this.from] as number;
    if (this.mode === 'limiting') this.around.limited.add(island);
    else this.around.limited.delete(island);
  }
}
