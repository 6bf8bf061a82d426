import type { Facts } from '../../rules/rule.ts';
import { batteryRows } from './battery-rows.ts';
import { branchRows } from './branch-rows.ts';
import { fuseRows } from './fuse-rows.ts';
import { loadRows } from './load-rows.ts';
import type { Budget } from './rows.ts';
import { supplyRows } from './supply-rows.ts';
import { wayRows } from './ways/way-rows.ts';
import { wireRows } from './wire-rows.ts';

/**
 * The current budget, hook-up by hook-up: supplies, loads, branches, fuses, power wires and batteries in receive and in
 * sending, and the way from supply to each load.
 */
export function budgetOf({ station, hookups }: Facts): Budget {
  return {
    supplies: hookups.flatMap((tried) => supplyRows(station, tried)),
    loads: hookups.flatMap((tried) => loadRows(station, tried)),
    branches: hookups.flatMap((tried) => branchRows(station, tried)),
    ways: hookups.flatMap((tried) => wayRows(station, tried)),
    fuses: hookups.flatMap((tried) => fuseRows(station, tried)),
    wires: hookups.flatMap((tried) => wireRows(station, tried)),
    batteries: hookups.flatMap((tried) => batteryRows(station, tried)),
  };
}
