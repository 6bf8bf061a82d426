import type { PortClass } from '../../../core/index.ts';

/** The classes of cables as people say them. */
export const classNames: Record<PortClass, string> = {
  dc: 'Power',
  rf: 'RF',
  audio: 'Audio',
  control: 'Keying',
  data: 'Data',
  earth: 'Earth',
};

export const statuses = [
  { id: 'toMake', label: 'to make' },
  { id: 'made', label: 'made' },
  { id: 'tested', label: 'tested' },
] as const;
