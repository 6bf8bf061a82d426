import './age.css';

/** A clock in a broken ring: not computed, or from before. It is no severity, and looks like none. */
export const AgeMark = ({ size = 14 }: { size?: number }) => (
  <svg className="age-mark" viewBox="0 0 16 16" width={size} height={size} aria-hidden="true">
    <circle cx="8" cy="8" r="6.8" />
    <path d="M8 4.2V8.3L10.8 10" />
  </svg>
);
