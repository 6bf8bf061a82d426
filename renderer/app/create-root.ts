/*
 * React starts here, in the file of its own that `vite.config.ts` makes of it and this. The errors that it makes as it
 * starts have a browser that is looked into read all files on the way again, and ours is five times as long.
 */
export { createRoot } from 'react-dom/client';
