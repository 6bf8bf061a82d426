/** A reason to stop, to be read by the user; exit status 2. */
export class Refusal extends Error {}
