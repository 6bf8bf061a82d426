import type { Readable } from 'node:stream';
import type { Progress } from './command.ts';

/** What is around a run: what `-` reads, a sentence to whoever sits there, and how far it is. */
export interface Outside {
  readonly input: () => Readable & { readonly isTTY?: boolean };
  readonly say: (sentence: string) => void;
  readonly progress: Progress;
}
