import './flags.css';

interface Props {
  widthMm: number;
  heightMm: number;
  label: string;
  children: React.ReactNode;
}

/** A fraction less than the page: an element as high as the page would begin another one. */
const slackMm = 0.3;

/** A page of paper to draw on in millimetres; it prints in its true size. */
export function MmPage({ widthMm, heightMm, label, children }: Props) {
  const height = heightMm - slackMm;
  return (
    <svg
      className="mm-page"
      viewBox={`0 0 ${widthMm} ${height}`}
      width={`${widthMm}mm`}
      height={`${height}mm`}
      role="img"
      aria-label={label}
    >
      {children}
    </svg>
  );
}
