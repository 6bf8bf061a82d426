/** Which of so many numbers hang together: at first none, then those that were joined. */
export class Groups {
  /** Towards the number by which a group is named. */
  private readonly above: Int32Array;

  constructor(size: number) {
    this.above = new Int32Array(size);
    for (let n = 0; n < size; n++) this.above[n] = n;
  }

  /** Puts the group of one number to that of another, which goes on having its name. */
  join(one: number, other: number) {
    this.above[this.nameOf(one)] = this.nameOf(other);
  }

  /** The number by which a group is named. */
  nameOf(number: number): number {
    const { above } = this;
    let name = number;
    while (above[name] !== name) name = above[name] as number;
    // Whoever asks next has one step.
    for (let n = number; n !== name; ) {
      const next = above[n] as number;
      above[n] = name;
      n = next;
    }
    return name;
  }

  /** The name of each number's group. */
  names(): Int32Array {
    const { above } = this;
    for (let n = 0; n < above.length; n++) above[n] = this.nameOf(n);
    return above;
  }
}
