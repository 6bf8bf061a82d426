import { tell } from './questions.ts';

const lines: readonly string[] = [
  'Ctrl K: find a unit, port, cable, finding or action, or set down a unit of the shelf.',
  'Drag from port to port, or click one and then the other, to lay a cable. Let it go over free paper to set down a unit there.',
  'Enter on a port lists what it could be joined to, likeliest first; Space takes it, and Tab goes on to the next port.',
  'Pull the flag of a cable to plug that end in elsewhere; drop a unit of the shelf on a cable to put it in.',
  'Shift and click adds to the selection; Shift and drag over free paper draws a frame around what is meant.',
  'Arrow keys move what is selected. Ctrl D duplicates; Ctrl X, C and V cut, copy and paste, between windows too.',
  'Ctrl Z takes a step back, Ctrl Shift Z goes forward again, Ctrl J lists all steps. Delete removes what is selected.',
  'Ctrl 0 shows the whole station, Ctrl Shift 0 what is selected. 1 to 5 go from stage to stage; Ctrl B puts it on paper.',
];

export const showKeys = (): void => {
  void tell('Keys and gestures', 'On a Mac it is ⌘ instead of Ctrl.', { lines });
};
