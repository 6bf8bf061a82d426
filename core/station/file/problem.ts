/** Something wrong in a file: where it is and what is wrong with it, in a sentence. */
export interface Problem {
  /** `units[3].ports[1].connector`, `line 12, column 5`, or `file`. */
  readonly place: string;
  readonly message: string;
}

/** A path of keys as it is written in code: `['units', 3, 'name']` gives `units[3].name`. */
export function placeOf(path: readonly PropertyKey[]): string {
  if (path.length === 0) return 'file';
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    const name = String(key);
    if (!/^[A-Za-z_]\w*$/.test(name)) return `${text}["${name}"]`;
    return text === '' ? name : `${text}.${name}`;
  }, '');
}
