import { settingsIn, type Unit, type UnitKind } from '../../../../core/index.ts';
import { useHookup } from '../../../store/current.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';

/** Switch positions. Where the station has hook-ups they are set for the one that is looked at. */
export function UnitSettings({ unit, kind }: { unit: Unit; kind: UnitKind }) {
  const hookup = useHookup();
  const named = useStation((s) => s.hookups.some((h) => h.id === hookup.id));
  if (!kind.settings?.length) return null;
  const now = settingsIn(kind, unit, hookup);
  const choose = (setting: string, value: string) => {
    if (!named) change({ type: 'updateUnit', id: unit.id, set: { settings: { ...unit.settings, [setting]: value } } });
    else {
      const settings = { ...hookup.settings, [unit.id]: { ...hookup.settings?.[unit.id], [setting]: value } };
      change({ type: 'updateHookup', id: hookup.id, set: { settings } });
    }
  };
  return (
    <section>
      <h3>{named ? `Settings, ${hookup.name}` : 'Settings'}</h3>
      {kind.settings.map((setting) => (
        <SelectField
          key={setting.id}
          label={setting.label}
          value={now[setting.id] ?? setting.initial}
          options={setting.options}
          onChoose={(value) => choose(setting.id, value)}
        />
      ))}
    </section>
  );
}
