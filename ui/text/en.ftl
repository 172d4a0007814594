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
visits-again = New visit here
visits-again-at = at { $site }
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
undo = Take back: { $what }

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
call-more = Address, contact, day, technician, notes
questions-answered =
    { $count ->
        [one] 1 answered
       *[other] { $count } answered
    }
similar-site = A site like this is known already: { $site }, last visited { $date }.
similar-no-date = on an unknown day
similar-same = It is the same
similar-other = It is another

## The system

system-optional = Nothing here is needed to begin. Each fact you add sharpens the answer.
system-more = Everything else
system-known =
    { $known ->
        [0] nothing known yet
       *[other] { $known } of { $all } known
    }
system-back = Back to the system
system-take = Start from a usual system or an earlier visit
system-take-hint = This replaces what is known of the system here. It can be taken back.
system-taken = Taken over: { $what }
system-templates = Usual systems (invented examples)
system-earlier = From an earlier visit

## Readings

readings-taken = Taken
readings-others = Every point
readings-observed = Seen, heard and felt
readings-marked = Check this value
readings-back = Back to the readings
readings-drawing = Drawing of this system
schematic-title = This system
schematic-hint = Tap a point to enter or see what was read there.
schematic-unread = not read yet
schematic-suspected = Suspected, by their letters on the drawing
reading-value = What the instrument shows
reading-instrument = Read with
reading-mode = While the system is
reading-of-circuit = circuit { $circuit }
reading-circuit = Circuit, counted from the start of the manifold
reading-more = Accuracy, before or after
reading-accuracy = Accuracy, plus or minus
reading-accuracy-hint = Leave empty for what the instrument usually has.
reading-phase = Read
phase-found = as found
phase-left = as left
reading-before = Read at this point
reading-earlier = On earlier visits
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
causes-pictures = Pictures: the way from cause to finding, before and after
pictures-title = Pictures
pictures-back = Back to the causes
pictures-none = There is nothing to draw yet. Readings bring the pictures.
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
cause-turns = What would change this?
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
plan-gate = Before going on
plan-otherwise = Otherwise:
plan-remarks = To keep in mind
criterion-met = This passes.
criterion-missed = This does not pass.
gate-open = Enter what you find. All of it must pass.
gate-passed = Passed. Go on.
gate-failed = Not passed. Do not go on.
gate-go-back = Go back to that step
timer-least = at least { $time }
timer-start = Start
timer-stop = Stop
timer-over = over since { $time }
timer-done = { $timer }: the time has run out.
timer-runs = Running: { $timer }
caution-read = Read and understood
step-done = done
step-skipped = left out
step-is-done = Done
step-not-done = Not done after all
step-take-up = Take it up after all
step-skip = Leave it out
step-skip-now = Leave it out
step-reason = Why is it left out?
step-left-out = Left out:
step-waits =
    { $count ->
        [one] One caution waits to be acknowledged.
       *[other] { $count } cautions wait to be acknowledged.
    }
step-used = Minutes and parts used
step-minutes = Minutes it took
step-parts = Parts and materials used
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
photos-title = Photos
photo-add = Take or choose a photo
photo-hint = Place and device are removed from it. { $left } more can be kept.
photo-phase = It shows the system
photo-caption = What it shows
photo-remove = Remove
photo-enlarge = Larger or smaller: { $photo }
photo-untold = Photo of { $time }
signatures-title = Signatures
signature-name = Name in print
signature-keep = Keep this signature
signature-again = Draw again
signature-typed = Sign by name instead
signature-of = Signature of { $name }
signature-clear = Sign anew
report-homeowner-holds = The homeowner’s page says in plain words what was wrong, what was done and what to watch.
report-next-visit = Next visit, if one is agreed
save-technician = Save the report
save-homeowner = Save the homeowner’s page
report-saving = Saving…
report-saved = Saved as { $place }
report-open = Open the report
report-not-saved = Not saved: no place was chosen.

## Settings

settings-title = Settings
settings-theme = Colours
settings-wording = Units, language, colours
settings-units = Units
settings-language = Language
settings-reports = On the reports
settings-company = Company
settings-phone = Number to call
settings-phone-hint = It stands on the homeowner’s page.
settings-logo = Logo
settings-logo-alt = The company’s logo
settings-logo-hint = A PNG or JPEG picture. It is kept small.
settings-logo-remove = Remove the logo
settings-technician = Technician
settings-paper = Paper
settings-instruments = Instruments on the van
settings-instruments-hint = Tick what you carry. If you know its accuracy, write it: readings are then trusted as far as that.
settings-accuracy = Accuracy of the { $instrument }, plus or minus
settings-data = Where the data lies
settings-about = About
about-version = Version { $version }
about-data = Your visits are kept on this device, in { $folder }
about-bounds = Returnline advises a trained person. The unit’s instructions, local code and licensed practice come first.
