import {
  type Hookup,
  hookupsOf,
  type KeydownReport,
  type Overlay,
  type Station,
  type SurveyReport,
} from '../../core/index.ts';
import { ofAnyAge } from './computed.ts';
import { useResults, useStation, useView } from './use-store.ts';
import type { ViewState } from './view.ts';

type Chosen = Pick<ViewState, 'hookup' | 'control' | 'moment'>;

/** The hook-up looked at: the chosen one, or the first. */
export function currentHookup(station: Station, view: Pick<Chosen, 'hookup'>): Hookup {
  const hookups = hookupsOf(station);
  const hookup = hookups.find((h) => h.id === view.hookup) ?? hookups[0];
  if (!hookup) throw new Error('a station has at least one hook-up');
  return hookup;
}

/** The simulated key-downs of the hook-up looked at, one per control. */
export const keydownsOf = (report: SurveyReport | null, hookup: string): readonly KeydownReport[] =>
  report?.keydowns.filter((k) => k.hookup === hookup) ?? [];

/** The key-down looked at: that of the chosen control, or the first. */
function currentKeydown(report: SurveyReport | null, hookup: string, control: string | null): KeydownReport | null {
  const keydowns = keydownsOf(report, hookup);
  return keydowns.find((k) => k.control === control) ?? keydowns[0] ?? null;
}

/** What is everywhere at the moment looked at; null before the first survey. */
export function currentOverlay(report: SurveyReport | null, station: Station, view: Chosen): Overlay | null {
  if (!report) return null;
  const hookup = currentHookup(station, view).id;
  const control = currentKeydown(report, hookup, view.control)?.control ?? '';
  const here = report.overlays.filter((o) => o.hookup === hookup);
  const receive = here.find((o) => o.moment === 'receive') ?? null;
  const sending = view.moment === 'sending' && here.find((o) => o.moment === 'sending' && o.control === control);
  return receive && sending ? over(receive, sending) : receive;
}

const merged = new WeakMap<Overlay, Overlay>();

/** Sending in full: its report holds what is otherwise than in receive. Kept, as every card asks for it. */
function over(receive: Overlay, sending: Overlay): Overlay {
  const whole = merged.get(sending) ?? {
    ...sending,
    units: { ...receive.units, ...sending.units },
    cables: { ...receive.cables, ...sending.cables },
    ports: { ...receive.ports, ...sending.ports },
  };
  merged.set(sending, whole);
  return whole;
}

export function useHookup(): Hookup {
  const chosen = useView((v) => v.hookup);
  return useStation((station) => currentHookup(station, { hookup: chosen }));
}

/** Of whatever age: who shows it says so. */
export function useKeydown(): KeydownReport | null {
  const hookup = useHookup();
  const control = useView((v) => v.control);
  return useResults((r) => currentKeydown(ofAnyAge(r), hookup.id, control));
}

/**
 * A part of what is everywhere at the moment looked at, of whatever age; pick something that stays equal while nothing
 * changes. The drawing says above it all when it is old.
 */
export function useOverlay<T>(pick: (overlay: Overlay | null, report: SurveyReport | null) => T): T {
  const hookup = useView((v) => v.hookup);
  const control = useView((v) => v.control);
  const moment = useView((v) => v.moment);
  const station = useStation();
  return useResults((r) => {
    const report = ofAnyAge(r);
    return pick(currentOverlay(report, station, { hookup, control, moment }), report);
  });
}
