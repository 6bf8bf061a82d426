import { useMemo } from 'react';
import type { Overlay } from '../../../../core/index.ts';
import { ofAnyAge } from '../../../store/computed.ts';
import { currentOverlay } from '../../../store/current.ts';
import { useResults, useStation, useView } from '../../../store/use-store.ts';

/** What is everywhere in receive and in sending, for the hook-up and control looked at; of whatever age. */
export function useBothMoments(): { receive: Overlay | null; sending: Overlay | null } {
  const report = useResults(ofAnyAge);
  const station = useStation();
  const hookup = useView((v) => v.hookup);
  const control = useView((v) => v.control);
  return useMemo(() => {
    const at = (moment: 'receive' | 'sending') => currentOverlay(report, station, { hookup, control, moment });
    const sending = at('sending');
    return { receive: at('receive'), sending: sending?.moment === 'sending' ? sending : null };
  }, [report, station, hookup, control]);
}
