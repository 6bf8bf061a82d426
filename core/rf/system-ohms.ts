/** What sockets, meters and pads of a station are made for, in ohms. */
export const systemOhms = 50;
