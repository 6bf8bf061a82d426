/** Length of a dit in milliseconds at a speed in words a minute: 1200/WPM, the PARIS word of 50 dits (ITU-R M.1677-1). */
export const ditMs = (speedWpm: number): number => 1200 / speedWpm;
