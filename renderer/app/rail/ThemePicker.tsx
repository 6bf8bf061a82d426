import { useView } from '../../store/use-store.ts';
import { chooseTheme, type Theme } from '../../store/view.ts';
import { Picker } from '../title/Picker.tsx';

const themes = [
  { id: 'system', label: 'System' },
  { id: 'light', label: 'Light' },
  { id: 'dark', label: 'Dark' },
];

/** Light or dark, or as the system has it; below the stages, out of the way. */
export function ThemePicker() {
  const theme = useView((v) => v.theme);
  return (
    <div className="rail-foot">
      <Picker label="Theme" value={theme} options={themes} onChoose={(id) => chooseTheme(id as Theme)} />
    </div>
  );
}
