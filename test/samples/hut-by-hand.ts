import { solveReturns } from './hand-network.ts';

// The hut by hand. Inputs are the catalogue's and the drawing's own figures.

/** AWG 20 and AWG 14 at 20 °C, ohms per metre: NBS Handbook 100, 10.15 and 2.525 Ω per 1000 ft. */
export const awg20 = 10.15 / 304.8;
export const awg14 = 2.525 / 304.8;
export const ring = 0.002; // ring terminal under a binding post
export const stud = 0.0002; // ring terminal on the strip's stud
export const pole = 0.0009; // two-pole contact
export const barrel = 0.03;
export const way = 0.0005; // the strip's minus rail, to one outlet
export const holder = 0.002; // the strip's fuse holder
const chassis = 0.005; // a contact's screw to its box
export const [fuse1, fuse2, fuse3] = [0.123, 0.053, 0.0311]; // blade fuses of 1, 2 and 3 A, cold

/** One core of D1, of D2 and D3 (0.8 m), of D4 (1 m), joints included. */
export const d1 = ring + 0.8 * awg14 + stud;
export const lead = (metres: number) => pole + metres * awg20 + barrel;

/** Coax braid 14 mΩ/m and key-lead screen 50 mΩ/m, 0.6 m each, with their joints and the screws to both boxes. */
const r1 = 2 * chassis + 0.6 * 0.014 + 0.002 + 0.002; // BNC to BNC
const r3 = 2 * chassis + 0.6 * 0.014 + 0.002 + 0.01; // BNC to phono
const k3 = 2 * chassis + 0.6 * 0.05 + 0.02 + 0.02; // 3.5 mm to 3.5 mm
const k4 = 2 * chassis + 0.6 * 0.05 + 0.01 + 0.01; // phono to phono

/** Volts above the strip's minus bar at each load's own minus contact: the three boxes share their returns by braids. */
export function returns(tx: number, over: number, rx: number) {
  return solveReturns({ tx, over, rx }, [
    ['tx', 'bar', lead(0.8) + way],
    ['over', 'bar', lead(0.8) + way],
    ['rx', 'bar', lead(1) + way],
    ['tx', 'txBox', chassis],
    ['over', 'overBox', chassis],
    ['rx', 'rxBox', chassis],
    ['txBox', 'overBox', r1],
    ['txBox', 'overBox', k3],
    ['overBox', 'rxBox', r3],
    ['overBox', 'rxBox', k4],
  ]);
}
