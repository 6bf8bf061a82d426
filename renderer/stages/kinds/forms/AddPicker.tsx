import { useId, useState } from 'react';

interface Props {
  label: string;
  options: readonly { readonly id: string; readonly label: string }[];
  onAdd: (id: string) => void;
}

/** A list to choose from and a button that adds the choice. */
export function AddPicker({ label, options, onAdd }: Props) {
  const id = useId();
  const [chosen, setChosen] = useState('');
  const value = options.some((option) => option.id === chosen) ? chosen : (options[0]?.id ?? '');
  return (
    <div className="kind-add">
      <label htmlFor={id}>{label}</label>
      <select id={id} className="input" value={value} onChange={(event) => setChosen(event.target.value)}>
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.label}
          </option>
        ))}
      </select>
      <button type="button" className="button" aria-label={label} onClick={() => onAdd(value)}>
        Add
      </button>
    </div>
  );
}
