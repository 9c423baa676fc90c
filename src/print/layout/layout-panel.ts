import { done, type Result } from '../../core/problem.ts';
import type { Block } from './block.ts';
import type { Faces } from './face.ts';
import { findLackingRoom, type RoomNames } from './find-lacking-room.ts';
import { type FacePlan, fitSteps } from './fit-steps.ts';
import type { FaceSize } from './outline.ts';
import type { Panel } from './panel.ts';
import { furnish } from './panel-region.ts';
import type { Box, Placed } from './placed.ts';

export interface PanelLayout {
  readonly items: readonly Placed[];
  /** Where symbols and codes stand. */
  readonly boxes: readonly Box[];
  /** As they were set, with the foot. */
  readonly blocks: readonly Block[];
}

/** Sets a panel in the largest letters that fit; else names everything that finds no room, with what it lacks. */
export function layoutPanel(panel: Panel, names: RoomNames, faces: Faces): Result<PanelLayout> {
  const fitted = fitSteps(planOf(panel, faces), faces);
  if (!fitted.ok) {
    return { ok: false, problems: findLackingRoom(planOf(panel, faces), fitted, names, faces) };
  }
  const fixed = furnish(panel, panel.size, fitted.step, faces);
  if (!fixed.ok) throw new Error(`${fixed.element}: fitted and yet without room`);
  const foot = panel.footAt?.(fitted.step);
  return done({
    items: [...fitted.items, ...fixed.items],
    boxes: fixed.boxes,
    blocks: [...panel.blocksAt(fitted.step), ...(foot ? [foot] : [])],
  });
}

function planOf(panel: Panel, faces: Faces): FacePlan {
  return {
    size: panel.size,
    stepCount: panel.stepCount,
    blocksAt: (step) => panel.blocksAt(step),
    regionOf: (size: FaceSize, step) => {
      const furnished = furnish(panel, size, step, faces);
      return furnished.ok ? furnished.region : furnished;
    },
    align: panel.align,
    isCentredInHeight: panel.isCentredInHeight,
  };
}
