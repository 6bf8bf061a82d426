/** Ohms per metre of one core at 20 °C: NBS Handbook 100, ohms per 1000 ft, and 304.8 m in 1000 ft. */
export const awg = {
  10: 0.9989 / 304.8,
  14: 2.525 / 304.8,
  16: 4.016 / 304.8,
  18: 6.385 / 304.8,
  20: 10.15 / 304.8,
  22: 16.14 / 304.8,
  24: 25.67 / 304.8,
};

/** A joint of two halves, as the catalogue has it: the worse half counts. */
export const joint = { post: 0.002, stud: 0.0002, pole: 0.0009, barrel: 0.03, jack35: 0.02, phono: 0.01, bnc: 0.002 };

/** A blade fuse, cold, by its rating (data sheet, typical), and the two contacts of the strip's holder. */
export const blade = { 1: 0.123, 2: 0.053, 3: 0.0311, 5: 0.01785, 10: 0.0077 };
export const holder = 0.002;

/** RG-58 at 14.06 MHz in dB per metre: between the printed 1.5 dB at 10 MHz and 3.7 dB at 50 MHz per 100 ft, log to log. */
export const rg58 = (1.5 * (3.7 / 1.5) ** (Math.log(1.406) / Math.log(5))) / 30.48;
