import { CostQueue } from './cost-queue.ts';
import type { Point } from './geometry.ts';
import type { Grid } from './grid.ts';

/** A place on the grid and whether the cable runs along (left, right) there rather than up or down. */
export interface Stop {
  readonly column: number;
  readonly row: number;
  readonly along: boolean;
}

// In pixels of detour that a cable takes to avoid it.
const bendCost = 32;
const crossingCost = 24;
const sharedLaneCost = 320;
const neighbourLaneCost = 0.5;
const nearCardCost = 0.35;
const flagCost = 160;
/** A bend so near to the port that the flag has no room. */
const earlyBendCost = 90;

/**
 * Finds the cheapest way for a cable between two stops (A*; a state is a place and a direction). Sharing a lane with
 * another cable or running over a flag is dear enough to happen only where there is no other way.
 */
export class Search {
  private readonly grid: Grid;
  private readonly cost: Float64Array;
  private readonly from: Int32Array;
  /** The round in which a state's cost was set: saves clearing the arrays for every cable. */
  private readonly seen: Uint32Array;
  private readonly closed: Uint32Array;
  private readonly queue = new CostQueue();
  private round = 0;
  private early: ReadonlySet<number> = new Set();

  /** Above 1 the way that is left is overstated: the search is much shorter, the route now and then a little longer. */
  private readonly haste: number;
  /** A search that looks at more places than this gives up. */
  private readonly mostSteps: number;

  constructor(grid: Grid, haste: number, mostSteps = Number.POSITIVE_INFINITY) {
    this.grid = grid;
    this.haste = haste;
    this.mostSteps = mostSteps;
    const states = grid.xs.length * grid.ys.length * 2;
    this.cost = new Float64Array(states);
    this.from = new Int32Array(states);
    this.seen = new Uint32Array(states);
    this.closed = new Uint32Array(states);
  }

  /** The places passed, both stops included; null where cards close every way or it gave up. In `early` places it avoids to bend. */
  find(start: Stop, goal: Stop, early: ReadonlySet<number>): Point[] | null {
    this.round++;
    this.early = early;
    this.queue.clear();
    const first = this.stateOf(start.column, start.row, start.along);
    const last = this.stateOf(goal.column, goal.row, goal.along);
    this.reach(first, -1, 0, goal);
    for (let step = 0; this.queue.size > 0 && step < this.mostSteps; step++) {
      const state = this.queue.pop();
      if (state === last) return this.trace(state);
      if (this.closed[state] === this.round) continue;
      this.closed[state] = this.round;
      this.expand(state, goal);
    }
    return null;
  }

  private stateOf(column: number, row: number, along: boolean): number {
    return (row * this.grid.xs.length + column) * 2 + (along ? 0 : 1);
  }

  private expand(state: number, goal: Stop) {
    const { grid } = this;
    const width = grid.xs.length;
    const place = state >> 1;
    const along = (state & 1) === 0;
    const column = place % width;
    const row = (place - column) / width;
    const shared = (grid.along[place] ?? 0) + (grid.upDown[place] ?? 0) > 0;
    const early = this.early.has(place) ? earlyBendCost : 0;
    this.reach(state ^ 1, state, bendCost + early + (shared ? sharedLaneCost : 0), goal);
    for (const step of [-1, 1]) {
      const nextColumn = along ? column + step : column;
      const nextRow = along ? row : row + step;
      if (nextColumn < 0 || nextColumn >= width || nextRow < 0 || nextRow >= grid.ys.length) continue;
      if (grid.blocked[nextRow * width + nextColumn]) continue;
      const lines = along ? grid.xs : grid.ys;
      const index = along ? column : row;
      const distance = Math.abs((lines[index + step] ?? 0) - (lines[index] ?? 0));
      this.reach(
        this.stateOf(nextColumn, nextRow, along),
        state,
        this.stepCost(nextColumn, nextRow, along, distance),
        goal,
      );
    }
  }

  private stepCost(column: number, row: number, along: boolean, distance: number): number {
    const { grid } = this;
    const width = grid.xs.length;
    const at = row * width + column;
    const same = along ? grid.along : grid.upDown;
    const other = along ? grid.upDown : grid.along;
    const beside = along ? width : 1;
    let cost = distance;
    if (same[at]) cost += sharedLaneCost;
    if (other[at]) cost += crossingCost;
    if (same[at - beside] || same[at + beside]) cost += distance * neighbourLaneCost;
    if (grid.near[at]) cost += distance * nearCardCost;
    if (grid.flags[at]) cost += flagCost;
    return cost;
  }

  private reach(state: number, from: number, step: number, goal: Stop) {
    const cost = from < 0 ? 0 : (this.cost[from] ?? 0) + step;
    if (this.seen[state] === this.round && (this.cost[state] ?? 0) <= cost) return;
    this.seen[state] = this.round;
    this.cost[state] = cost;
    this.from[state] = from;
    this.queue.push(state, cost + this.least(state, goal));
  }

  /** The way that is left: the distance, and a bend where the goal is not straight ahead. */
  private least(state: number, goal: Stop): number {
    const { xs, ys } = this.grid;
    const place = state >> 1;
    const column = place % xs.length;
    const row = (place - column) / xs.length;
    const dx = Math.abs((xs[column] ?? 0) - (xs[goal.column] ?? 0));
    const dy = Math.abs((ys[row] ?? 0) - (ys[goal.row] ?? 0));
    const along = (state & 1) === 0;
    const bends = (dx > 0 && dy > 0) || along !== goal.along || (along ? dy > 0 : dx > 0) ? bendCost : 0;
    return (dx + dy) * this.haste + bends;
  }

  private trace(last: number): Point[] {
    const { xs, ys } = this.grid;
    const points: Point[] = [];
    for (let state = last; state >= 0; state = this.from[state] ?? -1) {
      const place = state >> 1;
      const column = place % xs.length;
      points.push({ x: xs[column] ?? 0, y: ys[(place - column) / xs.length] ?? 0 });
    }
    return points.reverse();
  }
}
