import { useId } from 'react';
import './fields.css';

interface Props {
  label: string;
  value: string;
  options: readonly { readonly id: string; readonly label: string }[];
  onChoose: (id: string) => void;
}

/** One of a few, taken at once. */
export function SelectField({ label, value, options, onChoose }: Props) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <div className="field-line">
        <select id={id} className="input" value={value} onChange={(e) => onChoose(e.target.value)}>
          {options.map((option) => (
            <option key={option.id} value={option.id}>
              {option.label}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}
