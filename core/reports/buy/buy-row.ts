/** The groups of the shopping list in their order. */
export const buyGroups = ['cable', 'plug', 'adapter', 'fuse', 'holder', 'sleeve', 'ring', 'ready-made'] as const;

export type BuyGroup = (typeof buyGroups)[number];

/** A line of the shopping list. */
export interface BuyRow {
  readonly group: BuyGroup;
  readonly what: string;
  /** What is used, without allowance or spares. */
  readonly used: number;
  /** What to buy. */
  readonly count: number;
  /** Metres, or pieces. */
  readonly unit: 'm' | 'pieces';
  /** Numbers of cables, and names of units, that it is for. */
  readonly for: readonly string[];
}
