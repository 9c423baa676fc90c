/**
 * The stages of a making in their order, read off the lines and the steps: lines lead, and a stage that has only steps
 * stands where the method puts it, before the stage that follows it there.
 */
export function orderStages(lineStages: readonly string[], stepStages: readonly string[]): string[] {
  const method = [...new Set(stepStages)];
  const weighed = new Set(lineStages);
  const ordered = new Set<string>();
  for (const stage of weighed) {
    const place = method.indexOf(stage);
    for (const earlier of method.slice(0, Math.max(place, 0))) {
      if (!weighed.has(earlier)) ordered.add(earlier);
    }
    ordered.add(stage);
  }
  for (const stage of method) ordered.add(stage);
  return [...ordered];
}
