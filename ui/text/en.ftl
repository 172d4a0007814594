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
