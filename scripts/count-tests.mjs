/**
 * Counts a vitest JSON report. A test that was skipped or is still to be written counts as failed, and so does a test
 * file that could not be run, and a run in which nothing ran.
 */
export function countTests(report) {
  const left = report.numPendingTests + report.numTodoTests;
  const unrun = report.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  const failed = report.numFailedTests + left + unrun.length;
  const passed = report.numPassedTests;
  const reasons = [
    left > 0 && `${left} skipped or still to be written`,
    unrun.length > 0 && `not run: ${unrun.map((file) => file.name).join(', ')}`,
    !report.success && failed === 0 && 'the run itself failed',
    passed + failed === 0 && 'no test ran',
  ].filter((reason) => reason !== false);
  return { passed, failed: failed === 0 && reasons.length > 0 ? 1 : failed, reasons };
}
