import { Worker } from 'node:worker_threads';
import type { Outcome } from '../go-through.ts';

/** What a worker may take for one document. */
export interface Limits {
  /** Computing time: a busy machine makes a document late, not guilty. */
  readonly cpuSeconds: number;
  readonly megabytes: number;
}

/** A document, and its number. */
export interface Question {
  readonly bytes: Uint8Array;
  readonly number: number;
}

const lookEveryMs = 250;
const told = ['message', 'error', 'exit'];

/**
 * A worker that is asked for one outcome after another, and is ended and started anew where it hangs, dies or takes too
 * much memory. `file` answers each question that it is sent with the outcome.
 */
export class Watched {
  private worker: Worker | null = null;

  constructor(
    private readonly file: URL,
    private readonly limits: Limits,
  ) {}

  /** The outcome of what it is sent; `hung` and `crashed` also where the worker can say nothing any more. */
  ask(question: Question): Promise<Outcome> {
    const worker = this.worker ?? this.start();
    return new Promise((resolve) => {
      const since = process.cpuUsage();
      const end = (outcome: Outcome, dead: boolean) => {
        clearInterval(look);
        for (const event of told) worker.removeAllListeners(event);
        if (dead) this.stop();
        resolve(outcome);
      };
      const look = setInterval(() => {
        const { user, system } = process.cpuUsage(since);
        if ((user + system) / 1e6 <= this.limits.cpuSeconds) return;
        end({ verdict: 'hung', trouble: [`not done after ${this.limits.cpuSeconds} s of computing`] }, true);
      }, lookEveryMs);
      worker.once('message', (outcome: Outcome) => end(outcome, false));
      worker.once('error', (error) =>
        end({ verdict: 'crashed', trouble: [`the worker ended: ${error.message}`] }, true),
      );
      worker.once('exit', (code) => end({ verdict: 'crashed', trouble: [`the worker left with ${code}`] }, true));
      worker.postMessage(question);
    });
  }

  private start(): Worker {
    this.worker = new Worker(this.file, {
      resourceLimits: { maxOldGenerationSizeMb: this.limits.megabytes, maxYoungGenerationSizeMb: 64 },
    });
    return this.worker;
  }

  stop(): void {
    // Whatever it says while it ends is of no interest.
    this.worker?.on('error', () => undefined);
    void this.worker?.terminate();
    this.worker = null;
  }
}
