/**
 * A function of something that never changes (a document, a circuit, a trial) that works out each answer once. Answers
 * are kept as long as what they were worked out for.
 */
export function remember<O extends object, T>(make: (owner: O) => T): (owner: O) => T {
  const known = new WeakMap<O, { readonly answer: T }>();
  return (owner) => {
    const found = known.get(owner);
    if (found) return found.answer;
    const answer = make(owner);
    known.set(owner, { answer });
    return answer;
  };
}

/** The same for a function that is asked for several things of one owner; what else it is given changes no answer. */
export function rememberEach<O extends object, K, T, More extends unknown[] = []>(
  make: (owner: O, key: K, ...more: More) => T,
): (owner: O, key: K, ...more: More) => T {
  const knownOf = remember<O, Map<K, { readonly answer: T }>>(() => new Map());
  return (owner, key, ...more) => {
    const known = knownOf(owner);
    const found = known.get(key);
    if (found) return found.answer;
    const answer = make(owner, key, ...more);
    known.set(key, { answer });
    return answer;
  };
}
