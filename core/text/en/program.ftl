# Words of the headless program.
program-visit-file-good = { $path }: a good visit file.
program-faults = { $path }: { $count ->
    [one] one fault
   *[other] { $count } faults
}
program-pdf-written = Report: { $path }
program-stored = Kept in: { $path }
program-causes = Causes (each on its own; several may be true at once)
program-reasons = Why
program-sound = What was found as it should be
program-unexplained = Not explained by this
program-doubted = Instruments in doubt
program-unused = Not used
program-next = Next checks
program-plan = Plan
program-proof = Proof
program-assumed = Assumed
program-already-there = { $path } is there already. An invented fleet needs a new database, so that it is never mixed with real calls.
program-invented = Invented: { $visits } visits at { $systems } systems, in { $path }
program-board-causes = Causes of callbacks
program-board-repeats = Came back
program-board-waiting = First callback
program-board-rates = Callbacks by group
program-board-differences = What goes with which cause
program-board-fixes = Did fixes hold?
program-cause = cause
program-graph-good = Every check passed: { $counts }.
program-count-causes = { $count } causes
program-count-mechanisms = { $count } mechanisms
program-count-findings = { $count } findings
program-count-links = { $count } links
program-count-checks = { $count } checks
program-count-procedures = { $count } procedures
program-count-steps = { $count } steps
