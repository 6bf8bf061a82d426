import { createStore } from 'zustand/vanilla';

/** The newest error of the screen itself that nobody caught. */
export const screenErrors = createStore<{ readonly error: { readonly thrown: unknown } | null }>(() => ({
  error: null,
}));

export const forgetError = () => screenErrors.setState({ error: null });

/** Hears of everything that goes wrong on the page and was not caught. */
export function listenToErrors() {
  // Browsers report layouts that they put off as errors, without one.
  window.addEventListener('error', ({ error }) => error && tell(error));
  window.addEventListener('unhandledrejection', ({ reason }) => tell(reason));
}

function tell(thrown: unknown) {
  // The user called something off.
  if (thrown instanceof DOMException && thrown.name === 'AbortError') return;
  screenErrors.setState({ error: { thrown } });
}
