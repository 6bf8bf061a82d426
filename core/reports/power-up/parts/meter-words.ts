/** How amperes are read without a short: a meter's ampere socket is as good as a wire. Common practice. */
export const meterWords =
  'Amperes: on the supply’s own meter, with a clamp round the plus lead, or with a meter in the plus lead behind its fuse and below its own rating, never across the poles; then the red lead goes back to V before the tips touch anything.';
