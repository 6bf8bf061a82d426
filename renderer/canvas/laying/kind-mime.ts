/** How the shelf hands over a unit kind that is dragged to the paper. */
export const kindMime = 'application/x-stationwright-kind';
