/** Numbers by name. */
export interface NumberOf {
  get(name: string): number | undefined;
}

/** The numbers of a list of names, put into an index when the first is asked for. */
export class Names implements NumberOf {
  private known: ReadonlyMap<string, number> | null = null;

  constructor(private readonly names: () => readonly string[]) {}

  get(name: string): number | undefined {
    this.known ??= new Map(this.names().map((each, i) => [each, i]));
    return this.known.get(name);
  }
}
