import type { Circuit, Origin } from '../circuit/circuit.ts';
import type { KeyDown } from '../keydown/key-down.ts';
import { findCable, portName, unitName } from '../station/parts.ts';
import type { Station } from '../station/schema/schema.ts';
import { rfPortRef } from './contact-at.ts';

/** `Receiver · antenna` of an RF port's number. */
export function rfPortName(station: Station, circuit: Circuit, port: number): string {
  return portName(station, rfPortRef(circuit, port));
}

/** How a part is called when it is pointed at: `cable D4`, `fuse in D1`, `Fused strip`. */
export function nameOfOrigin(station: Station, origin: Origin): string {
  if (origin.type === 'element' || origin.type === 'chassis') return unitName(station, origin.unit);
  const number = findCable(station, origin.cable)?.number ?? origin.cable;
  return origin.type === 'cableFuse' ? `the fuse in ${number}` : number;
}

/** By what a part takes part in a finding. */
export function touchOf(origin: Origin): string {
  if (origin.type === 'element') return `part:${origin.unit}.${origin.element}`;
  if (origin.type === 'chassis') return `unit:${origin.unit}`;
  return `cable:${origin.cable}`;
}

/** Who is pressed in a key-down, for people: `Paddle`, `Paddle and Foot switch`. */
export function controlName(station: Station, circuit: Circuit, keyDown: KeyDown): string {
  const names = keyDown.controls.map((control) => unitName(station, circuit.actors[control]?.unit ?? ''));
  return names.length > 2 ? 'All controls' : names.join(' and ');
}

/** The same for programs: `paddle.levers`, `paddle.levers+switch.foot`. */
export const controlKey = (circuit: Circuit, keyDown: KeyDown): string =>
  keyDown.controls.map((control) => circuit.actors[control]?.key ?? '').join('+');
