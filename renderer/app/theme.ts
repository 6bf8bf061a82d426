import { viewStore } from '../store/view.ts';

/** Keeps the page's theme in step with the choice, and with the system where that is the choice. */
export function followTheme() {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const apply = () => {
    const { theme } = viewStore.getState();
    const resolved = theme === 'system' ? (dark.matches ? 'dark' : 'light') : theme;
    document.documentElement.dataset['theme'] = resolved;
  };
  dark.addEventListener('change', apply);
  viewStore.subscribe(apply);
  apply();
}
