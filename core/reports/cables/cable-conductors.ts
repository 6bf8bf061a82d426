import { wireName } from '../../catalog/wire/wire.ts';
import type { CableKind } from '../../station/schema/cable-kind.ts';

/** What is in a cable: `2 × AWG 14`, `1 × 0.14 mm², screen`, `50 Ω coax`. */
export function cableConductors({ cores, core, screen, coax }: CableKind): string {
  if (coax) return `${coax.z0} Ω coax`;
  return `${cores} × ${wireName(core)}${screen ? ', screen' : ''}`;
}
