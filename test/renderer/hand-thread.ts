import type { Thread } from '../../renderer/worker/watched-thread.ts';

/** Stands in for a thread: a test looks at what it was asked, and answers by hand, or never. */
export class HandThread<Q, A> implements Thread<Q, A> {
  readonly asked: Q[] = [];
  ended = false;
  onmessage: Thread<Q, A>['onmessage'] = null;
  onmessageerror: Thread<Q, A>['onmessageerror'] = null;
  onerror: Thread<Q, A>['onerror'] = null;
  postMessage(question: Q) {
    this.asked.push(question);
  }
  terminate() {
    this.ended = true;
  }
  answer(answer: A) {
    this.onmessage?.({ data: { answer } });
  }
  progress(done: number, of: number) {
    this.onmessage?.({ data: { progress: { done, of } } });
  }
  fail(message: string) {
    this.onmessage?.({
      data: { thrown: { name: 'RangeError', message, stack: `RangeError: ${message}\n    at spread` } },
    });
  }
  breakDown(message: string) {
    this.onerror?.({ message, preventDefault() {} });
  }
}
