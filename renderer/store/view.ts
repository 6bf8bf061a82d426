import { createStore } from 'zustand/vanilla';
import type { Change, Place, RingColour, Severity } from '../../core/index.ts';

export const stages = ['draw', 'check', 'cables', 'budget', 'power-up'] as const;
export type Stage = (typeof stages)[number];
export type Theme = 'light' | 'dark' | 'system';

export interface Selection {
  readonly units: readonly string[];
  readonly cables: readonly string[];
  /** Notes and zones. */
  readonly marks: readonly string[];
}

/** Something that might happen, shown on the drawing as if it had. */
export interface Supposed {
  /** Cables that it moves or changes; how they are meant to lie is drawn faint. */
  readonly cables: readonly string[];
  /** What is done to the document; null where something fails. */
  readonly change: Change | null;
  readonly severity: Severity;
  /** What suffers by it. */
  readonly hurt: readonly Place[];
}

/** What the window shows of the document; none of it is saved with it. */
export interface ViewState {
  readonly stage: Stage;
  readonly selection: Selection;
  /** The hook-up and control looked at; null for the first there is. */
  readonly hookup: string | null;
  readonly control: string | null;
  readonly moment: 'receive' | 'sending';
  readonly theme: Theme;
  /** Whether the small map of the drawing is shown; null lets its size decide. */
  readonly map: boolean | null;
  /** Places to mark on the drawing while a finding is pointed at; what is kept marked where nothing is. */
  readonly hovered: readonly Place[];
  /** Places that stay marked: what a previewed fix would touch, in what two hook-ups differ. */
  readonly kept: readonly Place[];
  /** A mix-up or failure that is pointed at. */
  readonly supposed: Supposed | null;
  /** Rings that measures would put at ports, by `unit.port`; null where one would go. */
  readonly rings: ReadonlyMap<string, RingColour | null>;
  /** A wish to see places: the drawing centres on them. A new object each time, so the same wish can be made twice. */
  readonly shown: { readonly places: readonly Place[] } | null;
}

const noRings: ViewState['rings'] = new Map();
const nothing: Selection = { units: [], cables: [], marks: [] };

export const viewStore = createStore<ViewState>(() => ({
  stage: 'draw',
  selection: nothing,
  hookup: null,
  control: null,
  moment: 'receive',
  theme: 'system',
  map: null,
  hovered: [],
  kept: [],
  supposed: null,
  rings: noRings,
  shown: null,
}));

const { setState } = viewStore;

export const showStage = (stage: Stage) => setState({ stage });
export const select = (selection: Partial<Selection>) => setState({ selection: { ...nothing, ...selection } });
export const chooseHookup = (hookup: string) => setState({ hookup, control: null });
export const chooseControl = (control: string) => setState({ control });
export const chooseMoment = (moment: ViewState['moment']) => setState({ moment });
export const showMap = (map: boolean) => setState({ map });
export const pointAt = (places: readonly Place[]) =>
  setState(({ kept }) => ({ hovered: places.length > 0 ? places : kept }));

export const suppose = (supposed: Supposed | null) => setState({ supposed });

/** Shows rings that are not there yet; none without any. */
export const planRings = (rings: ViewState['rings'] = noRings) => setState({ rings });

/** Marks places until others, or none, are kept marked. */
export const keepMarked = (kept: readonly Place[]) => setState({ kept, hovered: kept });

/** What a new document starts with. */
export const resetView = () =>
  setState({
    selection: nothing,
    hookup: null,
    control: null,
    moment: 'receive',
    hovered: [],
    kept: [],
    supposed: null,
    shown: null,
  });

export const chooseTheme = (theme: Theme) => setState({ theme });

/** Asks the drawing to bring places into view; what is selected stays selected. */
export const lookAt = (places: readonly Place[]) => setState({ shown: { places } });

/** Selects places and asks the drawing to bring them into view. */
export function showPlaces(places: readonly Place[]) {
  setState({
    selection: {
      units: [...new Set(places.flatMap((p) => ('unit' in p ? [p.unit] : [])))],
      cables: [...new Set(places.flatMap((p) => ('cable' in p ? [p.cable] : [])))],
      marks: [],
    },
    shown: { places },
  });
}
