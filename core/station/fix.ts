import type { Change } from './edit.ts';

/** An edit that puts something right, and what it is called: `Swap the cores of D2`. */
export interface Fix {
  readonly name: string;
  readonly change: Change;
}
