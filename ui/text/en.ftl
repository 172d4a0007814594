# Texts of the interface. Findings, causes and plans come from the engine.

app-name = Returnline

## Everywhere

back-to-visits = Back to visits
answer-yes = Yes
answer-no = No
answer-unknown = ?
answer-unknown-long = Don’t know
notice-note = Note
notice-caution = Caution
notice-doubt = Is this right?
notice-wrong = Problem
notice-good = Good
failure-unknown = Something went wrong that the app does not know. Nothing you entered was removed.
working = Working it out…
measure-unit = Unit of { $label }
measure-sign = Change the sign of { $label }

## Visits

visits-title = Visits
visits-new = New visit
visits-search = Find a visit
visits-found =
    { $count ->
        [one] One visit
       *[other] { $count } visits
    }
visits-none-found = No visit holds these words.
visits-open = open
visits-empty = No visits yet. Start one with what the customer told you; everything else can come later.

## Steps of a visit

steps-label = Steps of this visit
step-call = Call
step-system = System
step-readings = Readings
step-causes = Causes
step-plan = Plan
step-report = Report
step-begun = has entries

title-call = What is wrong?
title-system = What do we know?
title-readings = What do we measure?
title-causes = What is the cause?
title-plan = What to do
title-report = Report
onward-readings = On to the readings
onward-causes = See the causes
onward-plan = See the work plan
onward-report = On to the report

## The call

call-symptoms = What the customer noticed

## The system

system-optional = Nothing here is needed to begin. Each fact you add sharpens the answer.
system-more = Everything else
system-known =
    { $known ->
        [0] nothing known yet
       *[other] { $known } of { $all } known
    }
system-back = Back to the system

## Readings

readings-taken = Taken
readings-others = Every point
readings-observed = Seen, heard and felt
readings-marked = Check this value
readings-back = Back to the readings
reading-value = What the instrument shows
reading-instrument = Read with
reading-mode = While the system is
reading-circuit = Circuit, counted from the start of the manifold
reading-more = Accuracy, before or after
reading-accuracy = Accuracy, plus or minus
reading-accuracy-hint = Leave empty for what the instrument usually has.
reading-phase = Read
phase-found = as found
phase-left = as left
reading-before = Read at this point
reading-change = Change
reading-remove = Remove { $reading }
reading-save = Keep this reading
reading-save-change = Keep the change
reading-done = Done here

## Checks

check-next = Check next
check-enter = Enter: { $point }
check-outcomes = What would it tell?

## Causes

causes-others =
    { $count ->
        [one] One less likely cause
       *[other] { $count } less likely causes
    }
causes-checks =
    { $count ->
        [one] One more check worth its time
       *[other] { $count } more checks worth their time
    }
causes-unexplained = Not yet explained
causes-unused = Readings not used
causes-assumed = Assumed for want of a record
cause-why = Why?
cause-for = Speaks for it
cause-against = Speaks against it
cause-path = How it leads there
cause-figures = The numbers
cause-no-reasons = Only how often it happens: nothing found so far speaks for or against it.
cause-context = Known of this system
why = Why?
figures-measured = Measured:
figures-expected = Expected here:

## The plan

plan-treats = Work on
plan-done = { $done } of { $all } steps done
plan-bring = What to bring
plan-tools = Tools
plan-materials = Materials
plan-none = No work is planned yet: no cause is likely enough. Take the next check first.
plan-step = Step { $number }
plan-gate = Go on only if:
plan-otherwise = Otherwise:
plan-step-open = Mark as done
plan-step-done = Done
plan-proof = Prove it
proof-expected = Should read { $value }
proof-before = As found: { $value }
proof-after = As left: { $value }
proof-not-read = not read

## The report

report-holds = The service report is a PDF of this visit:
report-part-system = the system as far as it is known
report-part-readings = every reading with its uncertainty
report-part-causes = the causes with their reasons
report-part-plan = the work plan with its quantities, done and not done
report-part-cautions = the cautions that belong to the work
report-unknown = What is not known is left out or said to be unknown.
report-save = Save the report
report-saving = Saving…
report-saved = Saved as { $place }
report-open = Open the report
report-not-saved = Not saved: no place was chosen.

## Settings

settings-title = Settings
settings-theme = Colours
theme-system = As the device
theme-light = Light
theme-dark = Dark
theme-sun = Full sun (highest contrast)
settings-about = About
about-version = Version { $version }
about-data = Your visits are kept on this device, in { $folder }
about-bounds = Returnline advises a trained person. The unit’s instructions, local code and licensed practice come first.
