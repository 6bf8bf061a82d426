/**
 * Takes what is being typed: a field makes it a step when it is left. For what is to be done with the whole document
 * while the keyboard is in a field: save, print, close, another stage. The keyboard goes back to where it was.
 */
export function takeTyped() {
  const field = document.activeElement;
  if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return;
  field.blur();
  field.focus({ preventScroll: true });
}
