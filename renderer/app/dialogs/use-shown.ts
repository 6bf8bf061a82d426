import { type RefObject, useEffect, useRef } from 'react';

/** Shows a dialog over all else, the keyboard on its main answer: by itself the browser would take the first one. */
export function useShown(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    dialog.current?.querySelector<HTMLElement>('.button.main')?.focus();
  }, []);
  return dialog;
}
