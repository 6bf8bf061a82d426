import { useId } from 'react';

interface Props {
  label: string;
  value: string;
  options: readonly { readonly id: string; readonly label: string }[];
  onChoose: (id: string) => void;
}

/** A choice in the title bar: what it is in small letters, the choice itself in bold. */
export function Picker({ label, value, options, onChoose }: Props) {
  const id = useId();
  return (
    <div className="pick">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChoose(event.target.value)}>
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
