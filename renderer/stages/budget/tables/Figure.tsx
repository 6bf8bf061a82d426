import './figure.css';

interface Props {
  value: number;
  /** The same with other figures supposed, while some are. */
  whatIf: number | undefined;
  format: (value: number) => string;
  children?: React.ReactNode;
}

/** A number of a table as drawn, and under it what it would be; bold where it would be another. */
export function Figure({ value, whatIf, format, children }: Props) {
  return (
    <td className="number">
      {format(value)}
      <Supposition value={value} whatIf={whatIf} format={format} />
      {children}
    </td>
  );
}

/** `if 4.00 A`; nothing while all is as drawn. */
export function Supposition({ value, whatIf, format }: Omit<Props, 'children'>) {
  if (whatIf === undefined) return null;
  const [drawn, other] = [format(value), format(whatIf)];
  return <span className={drawn === other ? 'what-if same' : 'what-if'}>if {other}</span>;
}
