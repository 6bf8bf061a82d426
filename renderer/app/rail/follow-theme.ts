import { keepChoice, keptChoice } from '../../shell/keep-choice.ts';
import { chooseTheme, type Theme, viewStore } from '../../store/view.ts';

const themeKey = 'stationwright.theme';

/** Keeps the page's theme in step with the choice, and with the system where that is the choice; remembers it. */
export function followTheme() {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const apply = () => {
    const { theme } = viewStore.getState();
    const resolved = theme === 'system' ? (dark.matches ? 'dark' : 'light') : theme;
    document.documentElement.dataset['theme'] = resolved;
    keepChoice(themeKey, theme);
  };
  chooseTheme(rememberedTheme());
  dark.addEventListener('change', apply);
  viewStore.subscribe((now, before) => now.theme !== before.theme && apply());
  apply();
}

function rememberedTheme(): Theme {
  const theme = keptChoice(themeKey);
  return theme === 'light' || theme === 'dark' ? theme : 'system';
}
