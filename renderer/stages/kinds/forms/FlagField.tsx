interface Props {
  label: string;
  value: boolean;
  onChange: (value: boolean) => void;
}

/** Yes or no. */
export const FlagField = ({ label, value, onChange }: Props) => (
  <label className="check-line">
    <input type="checkbox" checked={value} onChange={(event) => onChange(event.target.checked)} />
    {label}
  </label>
);
