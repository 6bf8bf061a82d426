/** Anything below, in ohms, is a short: it keeps what is divided by it in the range of the numbers. */
export const leastOhms = 1e-6;
