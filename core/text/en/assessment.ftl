# What the engine thinks of a call.

verdict-cause = Most likely: { $cause } ({ $probability }).
verdict-pair = Most likely two things at once: { $cause } ({ $probability }).
verdict-normal = Nothing to correct: what was read and seen is as it should be ({ $probability } that nothing is wrong).
verdict-normal-because = Nothing to correct: { $cause } explains it ({ $probability } that nothing is wrong).
verdict-normal-so-far = Nothing to correct found so far: what was read and seen is as it should be ({ $probability } that nothing is wrong). What was not looked at may still hide a fault.
verdict-normal-because-so-far = Nothing to correct found so far: { $cause } explains it ({ $probability } that nothing is wrong). What was not looked at may still hide a fault.
verdict-not-the-loop = Not the loop: hand over to a licensed technician. Leading: { $cause } ({ $probability } that the loop is sound).
verdict-instrument-first = First the instrument: { $cause } ({ $probability }).
verdict-tied = These cannot be told apart yet: { $cause }. Treat them in this order, or take one of the checks.
verdict-undecided = Not decided yet. Leading so far: { $cause }.
verdict-contradiction = The entries contradict each other so far that nothing can be told. Look at the readings again.

pair-better = Two together explain it better: { $causes }
doubted = { $instrument } ({ $probability })
stop-found = Enough is known: { $cause }. Go on to the plan.
stop-nothing-worthwhile = No further check is worth its time.

found-present = { $finding }: yes
found-absent = { $finding }: no
found-low = { $finding }: low
found-normal = { $finding }: normal
found-high = { $finding }: high
found-at-edge = { $found }, at the edge

path-against = Against it. Were it so, this would be expected:
path-instrument = It was read with this instrument.
path-rival = It speaks for another cause: { $rival }.
path-rival-any = Other causes explain it as well.
path-rival-less = It speaks against another cause: { $rival }.
path-rival-less-any = It speaks against other causes.
found-itself = It was found on this visit.
ruled-out-itself = It was looked for on this visit and is not there.
call-line = Somebody called: something is probably wrong.
learned-line = From { $callbacks } of your own callbacks: confirmed in { $confirmed }, which moves where it starts.
learned-from = Learned from { $own } of your own callbacks and { $elsewhere } counted elsewhere; the shipped priors are worth { $weight } callbacks.
context-line = { $fact }: yes. { $why }
context-line-not-so = { $fact }: no. Had it been so: { $why }

figure-measured = measured { $value }
figure-expected = to be expected { $value }
figure-at-least = { $value } or more
figure-at-most = { $value } or less
figure-other = { $value }, as the other reads
figure-by-instrument = { $value } ({ $instrument })

check-tells-much = { $minutes } min; tells much about: { $causes }
check-tells-some = { $minutes } min; tells something about: { $causes }
check-tells-little = { $minutes } min; tells little, about: { $causes }
weight-for = { $odds } to 1 for it
weight-against = { $odds } to 1 against it
weight-none = nothing either way
check-outcome = then { $cause }: { $probability }
licence-refrigerant = certified for refrigerant work
licence-electrical = licensed for electrical work

unused-line = { $what }: not used. { $why }

# The plan around its steps.
plan-treats = { $procedure } (for: { $causes })
plan-note-excluded = Left out, because the other undoes it: { $dropped } Kept: { $kept }
plan-note-not-here = { $procedure }: nothing to do on this kind of system.
plan-gate-pass = { $what } { $rule } { $limit }.
plan-gate-back = Go back to step { $number }: { $step }
plan-gate-unread = Still to be read: { $list }.
plan-step-in-short = Step { $number }: { $step }
plan-earlier-more = { $count ->
    [one] One more step comes first.
   *[other] { $count } more steps come first.
}
plan-want-earlier = Not done before it: { $step }
plan-want-earlier-steps = Not done before it: steps { $numbers }.
plan-want-earlier-gone = A step before it was not done.
plan-want-gate-empty = { $label }: not read; it must be { $rule }.
plan-want-gate-failed = { $label }: { $found }; it must be { $rule }.
plan-want-timer-not-started = { $label }: not started; it must run at least { $time }.
plan-want-timer-short = { $label }: { $ran } of at least { $time } have run.
plan-want-timer-end-unknown = { $label }: started, but not on record how long it ran; it must run at least { $time }.
plan-count-done = { $count } of { $all } steps done
plan-count-left-out = { $count } left out for a reason
plan-count-excused = { $count } done all the same, for a reason
plan-count-unmet = { $count } done but not met
plan-count-open = { $count } still to do
plan-unproved-open-step = Step { $number } is still to do: { $step }
plan-unproved-open-steps = These steps are still to do: { $numbers }.
plan-unproved-left-out = Step { $number }, left out: { $wanting } Reason: { $reason }
plan-unproved-excused = Step { $number }, done all the same: { $wanting } Reason: { $reason }
plan-unproved-unmet = Step { $number }, done but not met: { $wanting } No reason was written down.
plan-unproved-missed = { $label }: { $after }, not as it should be ({ $expected }).
plan-unproved-unread = { $label }: not read; it should be { $expected }.
plan-unproved-not-read = { $label }: not read.
plan-proof-label = { $point } ({ $when })
plan-proof-met = as it should be
plan-proof-missed = not as it should be
plan-proof-unread = not read
plan-proof-later = to be read later
plan-proof-open = nothing to hold it to
why-plan-fixed = The same for every system.
