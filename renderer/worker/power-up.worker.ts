import { causesOf, powerUpSheet, type Station } from '../../core/index.ts';
import type { PowerUpAnswer, PowerUpRequest } from './power-up-messages.ts';

/** The station of the newest sheet: what is worked out of it stays known while its readings are looked at. */
let station: Station | null = null;

/** Works out power-up sheets off the screen's thread. */
self.onmessage = ({ data }: MessageEvent<PowerUpRequest>) => {
  self.postMessage(answer(data));
};

function answer(request: PowerUpRequest): PowerUpAnswer {
  try {
    if (request.wants === 'sheet') {
      station = request.station;
      return { sheet: powerUpSheet(station) };
    }
    const { off, all } = request;
    const of = station;
    if (!of) return { causes: {} };
    const others = (step: string) => all.filter((r) => r.step !== step);
    return { causes: Object.fromEntries(off.map((r) => [r.step, causesOf(of, r, others(r.step))])) };
  } catch (error) {
    return { problem: error instanceof Error ? error.message : String(error) };
  }
}
