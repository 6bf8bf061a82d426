import { createContext } from 'react';
import type { Hookup, RfReport, SurveyReport } from '../../../core/index.ts';

/** What the sheet shows: the hook-up looked at, as drawn, and with other figures while some are supposed. */
export interface Shown {
  readonly hookup: Hookup;
  readonly report: SurveyReport;
  readonly other: SurveyReport | null;
}

export const ShownContext = createContext<Shown | null>(null);

/** The ways of a hook-up's transmitters, those that are the same whoever is pressed once: `Paddle or Hand key`. */
export function distinctRfIn(report: SurveyReport, hookup: string): RfReport[] {
  const known = new Map<string, RfReport>();
  for (const rf of rfIn(report, hookup)) {
    const key = JSON.stringify([rf.transmitter, rf.staircase]);
    const same = known.get(key);
    known.set(key, same ? { ...same, controlName: `${same.controlName} or ${rf.controlName}` } : rf);
  }
  return [...known.values()];
}

export const rfIn = ({ rf }: SurveyReport, hookup: string): RfReport[] => rf.filter((r) => r.hookup === hookup);
