/** Colours that a ring can have, by the letters of IEC 60757. */
export const ringCodes = ['BK', 'BN', 'RD', 'OG', 'YE', 'GN', 'BU', 'VT', 'GY', 'WH', 'TQ', 'GNYE'] as const;

export type RingColour = (typeof ringCodes)[number];
