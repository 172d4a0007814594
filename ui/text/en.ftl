# Texts of the interface. Findings, causes and plans come from the engine.

app-name = Returnline

## Everywhere

back-to-visits = Back to visits
answer-unknown = ?
answer-unknown-long = Don’t know
notice-note = Note
notice-caution = Caution
notice-doubt = Is this right?
notice-wrong = Problem
notice-good = Good
failure-unknown = Something went wrong that the app does not know. Nothing you entered was removed.
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
visits-no-place = No place entered
visits-leading = So far: { $cause }
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

call-site = Place
call-site-hint = A name or street to find this visit by.
call-complaint = What the customer says

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
readings-marked = Check this value
readings-back = Back to the readings
reading-value = What the instrument shows
reading-instrument = Read with
reading-mode = While the system is
reading-before = Read at this point
reading-remove = Remove { $reading }
reading-save = Keep this reading
reading-save-again = Try again
reading-done = Done here

## The next check

check-next = Check next
check-enter = Enter the reading

## Causes

causes-none = Nothing has been entered yet that points to a cause.
causes-unexplained = Not yet explained
cause-why = Why?
cause-for = Speaks for it
cause-against = Speaks against it
cause-path = How it leads there
cause-no-reasons = Only how often it happens: nothing found so far speaks for or against it.
cause-changes = What would change this
why = Why?

## The plan

plan-done = { $done } of { $all } steps done
plan-missing = With these known, more could be worked out for this system:
plan-none = No work is planned yet: no cause is likely enough. Take the next check first.
plan-gate = Go on only if:
plan-step-open = Mark as done
plan-step-done = Done

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
report-saved = Saved as { $path }
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
