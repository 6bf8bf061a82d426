import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { inTime } from '../../renderer/worker/in-time.ts';
import { type Reply, TookTooLong, watchThread } from '../../renderer/worker/watched-thread.ts';
import { HandThread } from './hand-thread.ts';

let threads: HandThread<string, number>[];
let replies: Reply<number>[];
const watched = () =>
  watchThread<string, number>(() => {
    const thread = new HandThread<string, number>();
    threads.push(thread);
    return thread;
  });
const keep = (reply: Reply<number>) => replies.push(reply);

beforeEach(() => {
  vi.useFakeTimers();
  threads = [];
  replies = [];
});

afterEach(() => {
  vi.useRealTimers();
});

test('one thread answers question after question', () => {
  const thread = watched();
  thread.ask('one', 5000, keep);
  threads[0]!.answer(1);
  thread.ask('two', 5000, keep);
  threads[0]!.answer(2);
  expect(threads).toHaveLength(1);
  expect(replies).toEqual([{ answer: 1 }, { answer: 2 }]);
  vi.advanceTimersByTime(60_000);
  expect(replies).toHaveLength(2);
});

test('what is thrown in the thread comes with its name and stack', () => {
  watched().ask('one', 5000, keep);
  threads[0]!.fail('too deep');
  const [reply] = replies;
  if (!reply || !('error' in reply) || !(reply.error instanceof Error)) throw new Error('no error came');
  expect(reply.error).toMatchObject({
    name: 'RangeError',
    message: 'too deep',
    stack: 'RangeError: too deep\n    at spread',
  });
});

test('one that does not answer within the limit is ended; the next question opens another', () => {
  const thread = watched();
  thread.ask('endless', 5000, keep);
  vi.advanceTimersByTime(5000);
  expect(threads[0]!.ended).toBe(true);
  expect(replies).toEqual([{ error: new TookTooLong(5000) }]);
  // What comes from it after all is nobody's.
  threads[0]!.answer(1);
  thread.ask('two', 5000, keep);
  threads[1]!.answer(2);
  expect(replies.slice(1)).toEqual([{ answer: 2 }]);
});

test('one that can’t be opened, or can’t be asked, is a reply too', () => {
  const closed = watchThread<string, number>(() => {
    throw new Error('no threads here');
  });
  closed.ask('one', 5000, keep);
  expect(replies).toEqual([{ error: new Error('no threads here') }]);
});

test('an answer that can’t be read is a reply too', () => {
  watched().ask('one', 5000, keep);
  threads[0]!.onmessageerror?.();
  expect(replies).toEqual([{ error: expect.any(Error) }]);
  expect(threads[0]!.ended).toBe(true);
});

test('a thread that dies between questions is replaced', () => {
  const thread = watched();
  thread.ask('one', 5000, keep);
  threads[0]!.answer(1);
  threads[0]!.breakDown('out of memory');
  thread.ask('two', 5000, keep);
  expect(threads[1]!.asked).toEqual(['two']);
  expect(replies).toEqual([{ answer: 1 }]);
});

test('ended, it says nothing more', () => {
  const thread = watched();
  thread.ask('one', 5000, keep);
  thread.end();
  threads[0]!.answer(1);
  vi.advanceTimersByTime(60_000);
  expect(replies).toEqual([]);
  expect(threads[0]!.ended).toBe(true);
});

test('what is promised is waited for no longer than its limit', async () => {
  const never = inTime(new Promise<number>(() => {}), 5000);
  const said = expect(never).rejects.toEqual(new TookTooLong(5000));
  await vi.advanceTimersByTimeAsync(5000);
  await said;
  expect(await inTime(Promise.resolve(1), 5000)).toBe(1);
  expect(vi.getTimerCount()).toBe(0);
});
