import { getViewportForBounds, useReactFlow, useStoreApi } from '@xyflow/react';
import { type RefObject, useCallback, useEffect, useMemo, useRef } from 'react';
import { change, currentStation, documentStore } from '../store/document.ts';
import { useDocument } from '../store/use-store.ts';
import { viewStore } from '../store/view.ts';
import { drawingView } from './drawing-view.ts';
import { drawnBounds } from './drawn-bounds.ts';
import { findFreePlace } from './laying/find-free-place.ts';
import { cardsOf } from './layout.ts';

const largestZoom = 1.2;
/** Free paper around the station. */
const marginPx = 22;
const stepMs = () => (matchMedia('(prefers-reduced-motion: reduce)').matches ? 0 : 160);

/** Below this, ports and labels are too small to read and only cost time to paint. */
const farZoom = 0.4;
/** How large the names of units are then, on the screen. */
const farNamePx = 6.2;

/** Keeps the station fitted to the paper until the user zooms or pans, and lends the drawing to the rest of the screen. */
export function useFitting(wrapper: RefObject<HTMLDivElement | null>) {
  const flow = useReactFlow();
  const store = useStoreApi();
  const opened = useDocument((d) => d.opened);
  const fitted = useRef(true);

  const fitAll = useCallback(
    (duration = 0) => {
      fitted.current = true;
      const { width, height, minZoom } = store.getState();
      const bounds = drawnBounds(documentStore.getState().history.station);
      const viewport = bounds
        ? getViewportForBounds(bounds, width, height, minZoom, largestZoom, `${marginPx}px`)
        : { x: 40, y: 40, zoom: 1 };
      void flow.setViewport(viewport, { duration });
    },
    [flow, store],
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: a document opened is the reason to fit
  useEffect(() => {
    const frame = requestAnimationFrame(() => fitAll());
    return () => cancelAnimationFrame(frame);
  }, [opened, fitAll]);

  useEffect(() => {
    if (!wrapper.current) return;
    const observer = new ResizeObserver(() => {
      if (fitted.current && documentStore.getState().history.station.units.length > 0) fitAll();
    });
    observer.observe(wrapper.current);
    return () => observer.disconnect();
  }, [wrapper, fitAll]);

  useEffect(() => {
    drawingView.fit = () => fitAll(stepMs());
    drawingView.fitSelection = () => {
      const { units, cables } = viewStore.getState().selection;
      const ends = currentStation()
        .cables.filter((c) => cables.includes(c.id))
        .flatMap((c) => [c.a.unit, c.b.unit]);
      const nodes = [...new Set([...units, ...ends])].map((id) => ({ id }));
      fitted.current = false;
      if (nodes.length > 0) void flow.fitView({ nodes, padding: 0.2, maxZoom: 1.6, duration: stepMs() });
    };
    drawingView.tidy = async () => {
      const station = currentStation();
      const { units } = viewStore.getState().selection;
      // The layout is a large library: it is fetched when it is first wanted.
      const { tidyChange } = await import('./paper/tidy-change.ts');
      const tidied = await tidyChange(station, units.length > 1 ? units : undefined);
      // What was drawn meanwhile is not overrun.
      if (currentStation().units !== station.units) return;
      change(tidied);
      requestAnimationFrame(() => fitAll(stepMs()));
    };
    drawingView.focus = (place) => {
      const id = 'unit' in place ? CSS.escape(place.unit) : '';
      const port = 'unit' in place && place.port ? ` [data-handleid="${CSS.escape(place.port)}"]` : '';
      // A unit that was only just set down is drawn in the next frame.
      requestAnimationFrame(() =>
        wrapper.current
          ?.querySelector<HTMLElement>(`.react-flow__node[data-id="${id}"]${port}`)
          ?.focus({ preventScroll: true }),
      );
    };
    drawingView.zoomIn = () => void flow.zoomIn({ duration: stepMs() });
    drawingView.zoomOut = () => void flow.zoomOut({ duration: stepMs() });
    drawingView.freePlace = (width, height) => {
      const { width: w, height: h } = store.getState();
      const { x, y, zoom } = flow.getViewport();
      const view = { x: -x / zoom, y: -y / zoom, width: w / zoom, height: h / zoom };
      return findFreePlace(cardsOf(documentStore.getState().history.station), view, width, height);
    };
  }, [fitAll, flow, store, wrapper]);

  return useMemo(
    () => ({
      byHand: (event: unknown) => {
        if (event) fitted.current = false;
      },
      onMove: (_: unknown, { zoom }: { zoom: number }) => {
        wrapper.current?.classList.toggle('far', zoom < farZoom);
        // Names keep their size on the screen while cards shrink.
        if (zoom < farZoom) wrapper.current?.style.setProperty('--far-name', `${Math.round(farNamePx / zoom)}px`);
      },
    }),
    [wrapper],
  );
}
