import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Measurement } from '../sheet/measurement.ts';
import type { BenchChain } from './results/chain.ts';
import type { PointResult } from './results/point-result.ts';
import { inSlices } from './slices.ts';
import type { Answering } from './use-answering.ts';

/** Results of a measurement as far as they are there. */
export interface Results {
  /** That of the point which is shown: always there. */
  readonly shown: PointResult;
  /** That of the point which the page was opened with. */
  readonly opening: PointResult;
  /** One a point in their order; those of a state before the last change are left out until they are computed anew. */
  readonly all: readonly (PointResult | undefined)[];
  /** Whether every point has its result. */
  readonly settled: boolean;
  /** The chain of a point in another state of the sheet, where it has that point and a number there. */
  chainAt(other: Measurement | undefined, pointId: string): BenchChain | undefined;
}

interface ResultsUse {
  readonly answering: Answering | undefined;
  readonly measurement: Measurement;
  readonly pointId: string;
  /** Whether a held handle is moving: then the other points wait. */
  readonly moves: boolean;
}

/**
 * The results of a measurement: that of the shown point at once, those of the others in slices while the page stays alive; the
 * next change cancels what is under way. What a change does not touch is remembered. None until there is what computes them.
 */
export function useResults({ answering, measurement, pointId, moves }: ResultsUse): Results | undefined {
  const memory = useMemo(() => answering?.remembered(), [answering]);
  const [first] = useState({ measurement, pointId });
  // The sheet that the page opens with is computed whole, on the server as here: the record on paper needs every point.
  if (memory && measurement === first.measurement)
    for (const { id } of measurement.points) memory.of(measurement, id);
  const all = measurement.points.map(({ id }) => memory?.known(measurement, id));
  const settled = all.every((result) => result !== undefined);
  const [, drawAgain] = useState(0);
  const wanting = settled || moves ? undefined : measurement;
  useEffect(() => {
    if (wanting === undefined || memory === undefined) return;
    const stop = new AbortController();
    const steps = wanting.points.map(({ id }) => () => {
      memory.of(wanting, id);
    });
    void inSlices({ steps, signal: stop.signal }).then((done) => {
      if (done) drawAgain((count) => count + 1);
    });
    return () => stop.abort();
  }, [memory, wanting]);
  if (memory === undefined) return undefined;
  const chainAt = (other: Measurement | undefined, id: string): BenchChain | undefined => {
    if (!other?.points.some((point) => point.id === id)) return undefined;
    const result = memory.of(other, id);
    return result.inRange ? result.result.chain : undefined;
  };
  const opening = memory.of(first.measurement, first.pointId);
  return { shown: memory.of(measurement, pointId), opening, all, settled, chainAt };
}
