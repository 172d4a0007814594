# Texts of the interface. Findings, causes and plans come from the engine.

app-name = Returnline

## Everywhere

back-to-visits = Back to visits
back-to-report = Back to the report
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
draft-left = Typed, not kept yet
draft-keep = Keep it
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
visits-invented = invented
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
kept = Kept: { $what }

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

last-visit = The visit before, { $date }
last-found = Found: { $causes }
last-found-none = No cause was confirmed.
last-ended = Ended: { $outcome }
last-open = How it ended was not said.
last-pressure = Loop gauge at rest, last read: { $pressure }

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
system-take-what = Fills in what is known there; you change what differs.
system-take-hint = This replaces what is known of the system here. It can be taken back.
system-taken = Taken over: { $what }
system-templates = Usual systems (invented examples)
system-earlier = From an earlier visit

## Readings

readings-taken = Taken
readings-first = Read first
readings-others = Every point
readings-observed = Seen, heard and felt
readings-marked = Check this value
readings-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}
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

## Checks

check-next = Check next
check-enter = Enter: { $point }
check-outcomes = What would it tell?

## Causes

causes-doubted =
    { $count ->
        [one] Prove it against another before you trust what it shows:
       *[other] Prove them against others before you trust what they show:
    }
causes-each = Each cause has its own probability. Several can be there at once, so together they may make more than 100 %.
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
causes-sound = Found as it should be
causes-unexplained = Not yet explained
causes-unused = Readings not used
causes-records = What the record does not allow yet
causes-assumed = Assumed for want of a record
cause-why = Why?
why-number = Why this number?
cause-by-itself = “9 to 1” means: found 9 times as readily with this cause as without it. Each by itself; those that say the same count for less together.
cause-for = Speaks for it
cause-against = Speaks against it
cause-more-reasons =
    { $count ->
        [one] One more reason
       *[other] { $count } more reasons
    }
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
plan-back = Back to the plan
plan-bring = What to bring
plan-tools = Tools
plan-materials = Materials
plan-none = No work is planned yet: no cause is likely enough. Take the next check first.
plan-step = Step { $number }
plan-gate = Before going on
plan-otherwise = If it does not pass:
plan-remarks = To keep in mind
criterion-met = Passes
criterion-worked-out = Worked out once both samples are entered
criterion-missed = Does not pass
gate-open = All of it must pass.
gate-passed = Passed. Go on.
gate-failed = Not passed. Do not go on.
gate-go-back = Go back to that step
timer-least = at least { $time }
timer-start = Start
timer-stop = Stop
timer-over = over since { $time }
timer-done = { $timer }: the time has run out.
timer-runs = Running: { $timer }
timer-ran = ran { $time }: long enough
timer-short = ran { $time }: too short
caution-read = Read and understood
caution-again = Read before; it holds here too
caution-held = This step is done. To take a tick back, choose “Not done after all” first.
caution-rest = In full
step-done = done
step-skipped = left out
step-is-done = Done
step-not-done = Not done after all
step-take-up = Take it up after all
step-skip = Leave it out
step-skip-now = Leave it out
step-reason = Why is it left out?
step-unmet = done but not met
step-excused = done all the same
step-without = Done all the same
step-without-now = Done all the same
step-without-reason = Why is it done all the same?
step-gone-on = Done all the same:
step-left-out = Left out:
step-earlier = This comes first:
step-earlier-more =
    { $count ->
        [one] and one more step
       *[other] and { $count } more steps
    }
step-waits =
    { $count ->
        [one] One caution waits to be acknowledged.
       *[other] { $count } cautions wait to be acknowledged.
    }
step-note = Note at this step
step-note-hint = What the step asks to write down. It stands at the step in the report.
step-used = Minutes and parts used
step-minutes = Minutes it took
step-parts = Parts and materials used
plan-proof = Prove it
proof-expected = Should read { $value }
proof-before = As found: { $value }
proof-after = As left: { $value }
proof-later = Read later: { $value }
proof-not-read = not read

## The report

report-what = What the reports hold
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
signature-by-name = Signed by name
signature-of = Signature of { $name }
signature-clear = Sign anew
report-homeowner-holds = The homeowner’s page says in plain words what was wrong, what was done and what to watch.
report-next-visit = Next visit, if one is agreed
save-technician = Save the report
save-homeowner = Save the homeowner’s page
report-saving = Saving…
report-saved = Saved as { $place }
report-closed = The visit is closed: { $outcome }.
report-still-open = The visit stays open in the list until you say how it ended.
report-to-outcome = Say how it ended
outcome-missing = To say that this is put right and proven, this is missing:
outcome-all-the-same = Choose it all the same
outcome-another = Choose another outcome
outcome-told = The report tells what is missing.
outcome-stands = Put right and proven was chosen, though this is missing:
report-nameless = Company or phone is not set: the reports go out without it, and the homeowner reads no number to call.
report-name-it = Set company and phone
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
settings-logo = Choose a logo
settings-logo-other = Choose another logo
settings-logo-alt = The company’s logo
settings-logo-hint = A PNG or JPEG picture. It is kept small.
settings-logo-remove = Remove the logo
settings-technician = Technician
settings-paper = Paper
settings-instruments = Instruments on the van
settings-instruments-hint = Tick what you carry. If you know its accuracy, write it: readings are then trusted as far as that.
settings-accuracy = Accuracy of the { $instrument }, plus or minus
demo-title = Demo company
demo-what = Invented sites with invented calls, to look around in. No person, company or place in them exists, they teach the rankings nothing, and they never leave this device.
demo-load = Load the demo company
demo-remove = Remove the demo company
demo-remove-hint = What you entered at its visits goes with it. Your own visits are not touched.
settings-data = Where the data lies
settings-about = About
about-version = Version { $version }
about-data = Your visits are kept on this device, in { $folder }
about-bounds = Returnline advises a trained person. The unit’s instructions, local code and licensed practice come first.

## All visits together

visits-across = All visits together
visits-board = Board
visits-exchange = To and from devices
back-to-board = Back to the board
board-title = What keeps coming back
board-filters = Choose what counts
board-filters-set =
    { $count ->
        [one] Choose what counts: one limit set
       *[other] Choose what counts: { $count } limits set
    }
board-no-filters = Count everything again
board-day-from = Visits from
board-day-to = Visits until
board-day-started-from = Commissioned from
board-day-started-to = Commissioned until
board-span-repeat = Counts as come back within
board-span-watch = Systems compared over their first
board-days = { $days } days
board-any = All
board-all = Show all { $count }
board-fewer = Show fewer
board-more = { $count } more
board-report = Save this as a report (PDF)
board-save = Save as a table (CSV)
board-causes = Causes
board-no-causes = No cause is confirmed yet. Confirm one on the causes of a visit.
board-by = Causes by
board-cause = Cause
board-count = Callbacks
board-share = Share
board-hours = Hours
board-cost = Cost
board-waiting = Time to the first callback
board-band = The band around the curve holds the true curve in 19 of 20 cases. Systems without a callback count until today.
board-first = The first callbacks
board-differences = What differs
board-repeats = Came back at the same system
board-again = Came back
board-no-repeats = Nothing came back.
board-fixes = Did the fixes hold?
board-after = After
board-held = Held
board-unasked = Not asked
board-early = Too early to say
board-fixes-hint = A row opens the fixes that did not hold. A later visit to the same system asks.
board-practice = Before and after a change
board-changed = Day on which you changed your practice
board-practice-hint = Enter the day, and systems commissioned before and after it are compared.
board-when = Commissioned
board-called = Called back
board-before = Before that day
board-since = Since that day
board-count-of = { $count } of { $all }
board-range = { $value } ({ $low } to { $high })
board-rates = By group
board-rates-hint = Callbacks a year per 100 systems. The line across a bar holds the true rate in 19 of 20 cases.
board-systems = Systems
board-callbacks = Callbacks
board-rate = Rate

## What was learned

learned-title = What your own callbacks taught
learned-what = Every cause that a check confirmed, and every call in which nothing was wrong, makes the next ranking a little more yours. The rules stay as they are; only how often each cause is expected moves.
learned-since = Counted since { $since }.
learned-cause =
    { $count ->
        [0] not confirmed yet; expected in { $before } of calls, now
        [one] confirmed once; expected in { $before } of calls, now
       *[other] confirmed { $count } times; expected in { $before } of calls, now
    }
learned-others =
    { $count ->
        [one] One more cause
       *[other] { $count } more causes
    }
learned-save = Save these counts
learned-take = Take in counts of another device
learned-taken = Taken in.
learned-anew = Begin anew
learned-anew-hint = Callbacks so far no longer count, nor what came from elsewhere. Your visits stay as they are.
learned-anew-now = Begin anew now
learned-begun = Begun anew.

## A cause found true or false

verdict-ask = Found out? Say whether it was this
verdict-question = Was it there?
verdict-yes = It was there
verdict-no = Ruled out
verdict-confirmed = Confirmed
verdict-ruled-out = Ruled out
verdict-check = Decided by this check
verdict-hint = What is confirmed counts on the board and teaches later rankings. It does not change this one.
fix-held = It held
fix-failed = It did not

## To and from other devices

exchange-title = Take along or bring in
exchange-what = Records travel as one file, by cable, card or any way you send files. Taking in the same file again changes nothing.
exchange-out = From this device
exchange-write = Save all records
exchange-write-some =
    { $count ->
        [one] Save one visit
       *[other] Save { $count } visits
    }
exchange-some =
    { $count ->
        [0] Choose single visits
        [one] One visit chosen
       *[other] { $count } visits chosen
    }
exchange-whole = With every visit of the same systems
exchange-without = Leave out the homeowner’s data
exchange-without-hint = Without names, addresses, complaints, notes, photos and signatures.
exchange-in = From another device
exchange-take = Take in a file
exchange-take-hint = All of it or nothing. What both devices changed is kept twice until you decide.
exchange-not-taken = Nothing taken in: no file was chosen.
exchange-decide =
    { $count ->
        [one] One record to decide
       *[other] { $count } records to decide
    }
exchange-decide-hint = Two devices say different things here. Choose what stands; the other is no longer shown.
exchange-side = Side { $number }
exchange-stands = Stands now
exchange-keep = Let side { $number } stand
exchange-settled = Decided: { $what }

## Backups

recovery-title = The records cannot be opened
recovery-what = Nothing is lost yet. Restore the newest whole backup below. What stands there now is kept beside it, so it can still be looked into.
backup-title = Backups
backup-undated = Day unknown
backup-visits =
    { $count ->
        [one] one visit
       *[other] { $count } visits
    }
backup-broken = Not whole: { $trouble }
backup-none = There is no automatic backup yet. The first is made when the app opens with a visit in it.
backup-older =
    { $count ->
        [one] One older backup
       *[other] { $count } older backups
    }
backup-newest =
    { $count ->
        [one] The newest backup is of { $made } and holds one visit.
       *[other] The newest backup is of { $made } and holds { $count } visits.
    }
backup-failed =
    { $code ->
        [store-disk-full] The automatic backup failed: the disk is full. What you entered until now is kept. Make room, and save a backup to a file in the settings.
       *[other] The automatic backup failed. { $trouble } What you entered is kept all the same; save a backup to a file in the settings.
    }
backup-save = Save a backup to a file
backup-back = Go back to a backup
backup-restore = Restore this one
backup-from-file = Restore from a file
backup-choose = Choose a backup
backup-confirm = The backup takes the place of all records on this device. What is there now is kept beside it under a name ending in “aside” and is not shown any more.
backup-restore-now = Restore now
backup-leave = Leave it as it is
backup-restored = Restored. The visits are those of the backup.
backup-folder = The backups lie in { $folder }
