/** What the bare page draws: boxes and lines of the same number, size and place as in the app. */
export interface BareCanvas {
  readonly width: number;
  readonly height: number;
  readonly viewport: { readonly x: number; readonly y: number; readonly zoom: number };
  readonly cards: readonly BareCard[];
  readonly lines: readonly BareLine[];
}

export interface BareCard {
  readonly id: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly ports: readonly BarePort[];
}

export interface BarePort {
  readonly id: string;
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  readonly x: number;
  readonly y: number;
}

export interface BareLine {
  readonly id: string;
  readonly from: { readonly unit: string; readonly port: string };
  readonly to: { readonly unit: string; readonly port: string };
}
