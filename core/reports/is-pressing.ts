import type { Finding } from '../rules/finding.ts';

/** Whether a finding has to be put right before anything is switched on: an open danger or fault. */
export const isPressing = (finding: Finding): boolean =>
  isOpenCause(finding) && (finding.severity === 'danger' || finding.severity === 'fault');

/** Whether a finding is not accepted, and follows from no other. */
export const isOpenCause = ({ accepted, causedBy }: Finding): boolean =>
  accepted === undefined && causedBy === undefined;

/** Whether a finding is so in a hook-up, by its id. */
export const isFoundIn = ({ hookups }: Finding, hookup: string): boolean =>
  hookups.length === 0 || hookups.includes(hookup);
