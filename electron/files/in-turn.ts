import { realPath } from './same-file.ts';

/** The last thing that waits for each file, while there is one. */
const last = new Map<string, Promise<unknown>>();

/** Does one thing with a file at a time: what comes while another is under way waits for it. */
export async function inTurn<Result>(file: string, act: () => Promise<Result>): Promise<Result> {
  const key = realPath(file);
  const before = last.get(key) ?? Promise.resolve();
  const result = before.then(act, act);
  last.set(key, result);
  try {
    return await result;
  } finally {
    if (last.get(key) === result) last.delete(key);
  }
}
