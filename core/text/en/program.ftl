# Words of the headless program.
program-visit-file-good = { $path }: a good visit file.
program-faults = { $path }: { $count ->
    [one] one fault
   *[other] { $count } faults
}
program-pdf-written = Report: { $path }
program-stored = Kept in: { $path }
program-causes = Causes (each on its own; several may be true at once)
program-reasons = Why: { $cause }
program-sound = What was found as it should be
program-unexplained = Explained by this in part at most
program-doubted = Instruments in doubt
program-unused = Not used
program-next = Next checks
program-could-check = Could still be looked at
program-tools = Tools
program-prior = Before anything is known: { $share } of callbacks [{ $source }]
program-facts = What is known of the system and its commissioning (factor on the odds if so / if not so)
program-links = { $from } brings about, each with this probability when it alone is there (↓ low, ↑ high)
program-links-left = { $count } more links further on: add --whole.
program-cause-names = Causes: { $names }
program-plan = Plan
program-proof = Proof
program-records = What the record does not allow yet
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
