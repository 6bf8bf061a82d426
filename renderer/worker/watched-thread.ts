import { afterAwake } from './after-awake.ts';

/** What a thread sends back for a question: its answer, or what was thrown, which keeps its stack as plain data. */
export type Reply<A> = { readonly answer: A } | { readonly error: unknown };

export interface ThreadError {
  readonly name: string;
  readonly message: string;
  readonly stack: string | undefined;
}

/** How far it is: so many of so many are done. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

export type ThreadMessage<A> = Reached | { readonly answer: A } | { readonly thrown: ThreadError };

interface Reached {
  readonly progress: Progress;
}

/** What is needed of a Worker. */
export interface Thread<Q, A> {
  postMessage(question: Q): void;
  terminate(): void;
  onmessage: ((event: { data: ThreadMessage<A> }) => void) | null;
  onmessageerror: (() => void) | null;
  onerror: ((event: { message: string; preventDefault(): void }) => void) | null;
}

/** The thread was ended, as it had not answered in time. */
export class TookTooLong extends Error {
  override readonly name = 'TookTooLong';
  constructor(limitMs: number) {
    super(`it took longer than ${Math.round(limitMs / 1000)} s and was stopped`);
  }
}

export interface WatchedThread<Q, A> {
  /**
   * Asks a thread that is not busy. A reply comes always, and once, unless the thread is ended before. A thread that
   * tells how far it is has the limit for each step of its way.
   */
  ask(
    question: Q,
    limitMs: number,
    onReply: (reply: Reply<A>) => void,
    onProgress?: (progress: Progress) => void,
  ): void;
  /** Ends the thread and what it is busy with, of which nothing more is heard; the next question opens another. */
  end(): void;
}

interface Waiting<A> {
  readonly tell: (reply: Reply<A>) => void;
  readonly tellProgress: (progress: Progress) => void;
  readonly startClock: () => void;
  stopClock: () => void;
}

/**
 * A thread for questions, one at a time, opened when it is first needed. It is ended, and opened anew for the next
 * question, when it breaks down or does not answer within the limit: an endless loop can't be stopped otherwise.
 */
export function watchThread<Q, A>(open: () => Thread<Q, A>): WatchedThread<Q, A> {
  let thread: Thread<Q, A> | null = null;
  let waiting: Waiting<A> | null = null;

  function finish(reply: Reply<A>) {
    const asked = waiting;
    waiting = null;
    asked?.stopClock();
    asked?.tell(reply);
  }

  function advance(progress: Progress) {
    waiting?.stopClock();
    waiting?.startClock();
    waiting?.tellProgress(progress);
  }

  function breakDown(error: unknown) {
    thread?.terminate();
    thread = null;
    finish({ error });
  }

  function listen(fresh: Thread<Q, A>): Thread<Q, A> {
    fresh.onmessage = ({ data }) => {
      if ('progress' in data) advance(data.progress);
      else finish('answer' in data ? data : { error: withStack(data.thrown) });
    };
    fresh.onmessageerror = () => breakDown(new Error('the answer could not be read'));
    fresh.onerror = (event) => {
      event.preventDefault();
      breakDown(new Error(event.message || 'the computation stopped'));
    };
    return fresh;
  }

  return {
    ask(question, limitMs, onReply, onProgress = () => {}) {
      if (waiting) throw new Error('a thread has one question at a time');
      const asked: Waiting<A> = {
        tell: onReply,
        tellProgress: onProgress,
        stopClock: () => {},
        startClock: () => {
          asked.stopClock = afterAwake(limitMs, () => breakDown(new TookTooLong(limitMs)));
        },
      };
      waiting = asked;
      asked.startClock();
      try {
        thread ??= listen(open());
        thread.postMessage(question);
      } catch (error) {
        breakDown(error);
      }
    },
    end() {
      waiting?.stopClock();
      waiting = null;
      thread?.terminate();
      thread = null;
    },
  };
}

const withStack = ({ name, message, stack }: ThreadError): Error =>
  Object.assign(new Error(message), { name, ...(stack === undefined ? {} : { stack }) });
