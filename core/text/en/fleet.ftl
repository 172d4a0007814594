# The manager's board, the exchange of records, and what became of fixes.

fleet-headline = { $callbacks ->
    [one] One callback
   *[other] { $callbacks } callbacks
} among { $visits ->
    [one] one visit
   *[other] { $visits } visits
} at { $systems ->
    [one] one system
   *[other] { $systems } systems
}: { $hours } h of work, cost { $cost }.
fleet-note-unexplained = { $count ->
    [one] One callback has
   *[other] { $count } callbacks have
} no confirmed cause.
fleet-note-unpriced = { $count ->
    [one] One callback has
   *[other] { $count } callbacks have
} no cost on record, so the true cost is higher.
fleet-note-undated = { $count ->
    [one] One system has
   *[other] { $count } systems have
} no day of commissioning and is left out wherever time counts.
fleet-note-demo = { $visits ->
    [one] One visit in these figures is invented: it belongs to the demo company, which the settings take away.
   *[other] { $visits } visits in these figures are invented: they belong to the demo company, which the settings take away.
}
fleet-note-only-troubled = Every system on record had a callback. Systems without trouble are missing, so rates and waiting times look worse than they are.
fleet-unknown = not known
fleet-share = { $share } % ({ $low } to { $high } %), { $count } of { $of }
fleet-rate = { $rate } ({ $low } to { $high }) a year per 100 systems

fleet-by-crew = Crew
fleet-by-year = Year of commissioning
fleet-by-season = Season of charging
fleet-by-fluid = Fluid
fleet-by-centre = Flow centre
fleet-by-pipe = Pipe of the circuits
fleet-by-cause = Cause
fleet-by-velocity-reached = Flush velocity
fleet-by-flushed-long-enough = Time flushed
fleet-by-filtered = Filter bag
fleet-by-two-filter-stages = Filter stages
fleet-by-unit-isolated = Heat pump while flushing
fleet-by-water-tested = Fill water
fleet-by-pipe-relaxed = Pipe before the last charge
fleet-by-circulators-bled = Circulators
fleet-by-charge-in-band = Charge pressure
fleet-by-freeze-point-checked = Freeze point

fleet-season-winter = charged December to February
fleet-season-spring = charged March to May
fleet-season-summer = charged June to August
fleet-season-autumn = charged September to November

habit-velocity-reached = flush velocity reached
    .not = flush velocity not reached
habit-flushed-long-enough = flushed long enough
    .not = flushed too short
habit-filtered = filter bag used
    .not = no filter bag
habit-two-filter-stages = two filter stages or more
    .not = fewer than two filter stages
habit-unit-isolated = heat pump valved off while flushing
    .not = heat pump not valved off while flushing
habit-water-tested = fill water tested
    .not = fill water not tested
habit-pipe-relaxed = pipe relaxed before the last charge
    .not = pipe not relaxed before the last charge
habit-circulators-bled = circulators bled
    .not = circulators not bled
habit-charge-in-band = charge pressure left inside the usual band
    .not = charge pressure left outside the usual band
habit-freeze-point-checked = freeze point checked after mixing
    .not = freeze point not checked after mixing

fleet-waiting-none = No system here has a day of commissioning, so waiting times are unknown.
fleet-waiting = Within a year of commissioning { $share } % ({ $low } to { $high } %) of { $systems } systems had their first callback. Fewer than half have had one so far.
fleet-waiting-median = Within a year of commissioning { $share } % ({ $low } to { $high } %) of { $systems } systems had their first callback; by day { $days } it was half.

fleet-differences-too-few = Too few systems on record to compare habits and crews.
fleet-differences-none = Nothing stands out: { $tests } comparisons of { $systems } systems over their first { $months } months found no difference that chance could not make or that is large enough to matter.
fleet-differences = From { $tests } comparisons of { $systems } systems over their first { $months } months. Told is only what is at least { $least } times as frequent beyond doubt of the interval; of what is told, one in twenty may still be chance. It goes together; it need not be the reason.
fleet-difference-habit = { $cause }: where it says “{ $group }”, { $here } % of systems had it ({ $with } of { $all }); where the opposite was done, { $others } % ({ $other-with } of { $other-all }). That is { $times } times as often ({ $low } to { $high }).
fleet-difference-crew = { $cause }: { $here } % of the systems commissioned by { $group } had it ({ $with } of { $all }), of all others { $others } % ({ $other-with } of { $other-all }). That is { $times } times as often ({ $low } to { $high }).
fleet-difference-season = { $cause }: { $here } % of the systems { $group } had it ({ $with } of { $all }), of all others { $others } % ({ $other-with } of { $other-all }). That is { $times } times as often ({ $low } to { $high }).
fleet-difference-fluid = { $cause }: { $here } % of the systems with { $group } had it ({ $with } of { $all }), of all others { $others } % ({ $other-with } of { $other-all }). That is { $times } times as often ({ $low } to { $high }).
fleet-difference-centre = { $cause }: { $here } % of the systems with a flow centre “{ $group }” had it ({ $with } of { $all }), of all others { $others } % ({ $other-with } of { $other-all }). That is { $times } times as often ({ $low } to { $high }).
fleet-difference-pipe = { $cause }: { $here } % of the systems with circuits of { $group } had it ({ $with } of { $all }), of all others { $others } % ({ $other-with } of { $other-all }). That is { $times } times as often ({ $low } to { $high }).
fleet-difference-only-habit = { $cause }: only systems where it says “{ $group }” had it, { $here } % of them ({ $with } of { $all }); of { $other-all } where the opposite was done, none.
fleet-difference-only-crew = { $cause }: only systems commissioned by { $group } had it, { $here } % of them ({ $with } of { $all }); of { $other-all } others, none.
fleet-difference-only-season = { $cause }: only systems { $group } had it, { $here } % of them ({ $with } of { $all }); of { $other-all } others, none.
fleet-difference-only-fluid = { $cause }: only systems with { $group } had it, { $here } % of them ({ $with } of { $all }); of { $other-all } others, none.
fleet-difference-only-centre = { $cause }: only systems with a flow centre “{ $group }” had it, { $here } % of them ({ $with } of { $all }); of { $other-all } others, none.
fleet-difference-only-pipe = { $cause }: only systems with circuits of { $group } had it, { $here } % of them ({ $with } of { $all }); of { $other-all } others, none.

fleet-held-30 = Held 30 days
fleet-held-90 = Held 90 days
fleet-held-183 = Held into the other season
fleet-before = Before
fleet-after = After
fleet-practice-too-few = Too few systems were commissioned on one side of { $date } to compare them over { $months } months.
fleet-practice-same = Of { $before-all } systems commissioned before { $date }, { $before } % had a callback within { $months } months; of { $after-all } after, { $after } %. Chance alone can make such a difference.
fleet-practice-better = Of { $before-all } systems commissioned before { $date }, { $before } % had a callback within { $months } months; of { $after-all } after, only { $after } %. Chance alone hardly makes such a difference; what else changed at that time counts, too.
fleet-practice-worse = Of { $before-all } systems commissioned before { $date }, { $before } % had a callback within { $months } months; of { $after-all } after, { $after } %. It got worse, and chance alone hardly makes such a difference.

fleet-fix-question = On { $date } this was put right here: { $cause }. Did it hold?
fleet-fix-held = It still held on { $date }.
fleet-fix-failed = It no longer held on { $date }.

fleet-picture-count = Callbacks by confirmed cause
fleet-picture-hours = Hours of work by confirmed cause
fleet-picture-cost = Cost by confirmed cause
fleet-picture-waiting = Time to the first callback
fleet-picture-days = days since commissioning
fleet-picture-rates = Callbacks a year per 100 systems; the line across a bar is its 95 % interval.

fleet-column-cause = cause
fleet-column-count = count
fleet-column-share = share
fleet-column-low = low
fleet-column-high = high
fleet-column-hours = hours
fleet-column-cost = cost
fleet-column-of = of
fleet-column-days = days
fleet-column-at-risk = still waiting
fleet-column-by = by
fleet-column-group = group
fleet-column-systems = systems
fleet-column-years = years
fleet-column-callbacks = callbacks
fleet-column-rate = rate per 100 systems and year
fleet-column-words = words
fleet-column-with = with
fleet-column-other-with = others with
fleet-column-other-of = of others
fleet-column-times = times as often
fleet-column-p = p
fleet-column-adjusted = p adjusted
fleet-column-held = held
fleet-column-known = known
fleet-column-unasked = not asked
fleet-column-too-early = too early

exchange-written = { $visits ->
    [one] One visit
   *[other] { $visits } visits
} in { $records } records written to { $path }.
exchange-taken = { $records ->
    [one] One record read
   *[other] { $records } records read
}: { $new } new, { $changed } changed, { $decide } to decide.
exchange-kind-site = Site
exchange-kind-household = Name and address of a site
exchange-kind-system = System
exchange-kind-commissioning = Commissioning
exchange-kind-visit = Visit
exchange-kind-words = Complaint and notes of a visit
exchange-kind-follow_up = Whether a fix held
exchange-kind-photo = Photo
exchange-kind-signatures = Signatures
exchange-nothing-to-decide = Nothing to decide.
exchange-record-at = { $kind }: { $place }
exchange-noted-here = Noted { $when } on this device
exchange-noted-elsewhere = Noted { $when } on another device ({ $device })
exchange-not-noted = not noted
exchange-as-written = As written
exchange-confirmed = Confirmed
exchange-ruled-out = Ruled out
exchange-circuit = circuit { $circuit }
exchange-work = Work
exchange-done = done
exchange-not-done = not done
exchange-left-out = left out
exchange-photo-there = The photo is there
exchange-photo-phase = It shows the system
exchange-photo-caption = What it shows
exchange-photo-time = Taken
exchange-photo-picture = Picture
exchange-part-curve = points of the curve
exchange-part-curve_temperature = temperature of the curve
exchange-part-clean_conductance = conductance when clean
exchange-part-volume = volume it holds
exchange-part-volume_fraction = strength by volume
exchange-part-tank_volume = volume of the tank
exchange-part-pre_charge = pre-charge of the tank
exchange-part-reservoir_diameter = diameter of the reservoir
exchange-part-minimum_suction = least suction pressure
exchange-part-maximum_pressure = highest pressure
exchange-part-dead_head_drop = drop in the dead-head test
exchange-part-label = name
exchange-part-headers = headers
exchange-part-indoor = indoor piping
exchange-part-hose = hoses
exchange-part-circuits = circuits
exchange-part-circulators = circulators
exchange-part-instruments = instruments
exchange-part-other = other

error-exchange-not-ours = This is not an exchange file. Nothing was changed.
error-exchange-newer = This exchange file comes from a newer program: it is of version { $found }, and this program reads up to version { $newest }. Update this one; nothing was changed.
error-exchange-cut = This exchange file was cut off. Copy it again; nothing was changed.
error-exchange-altered = This exchange file was altered on the way. Copy it again; nothing was changed. ({ $detail })
error-exchange-malformed = This exchange file holds something in line { $line } that cannot be taken. Have it written anew; nothing was changed. ({ $detail })
error-exchange-too-large = This exchange file is larger than any that is read. Export fewer visits at a time; nothing was changed. ({ $detail })
error-exchange-io = The exchange file could not be read or written. Copy it to this device first; nothing was changed. ({ $detail })
error-exchange-not-written = The exchange file was not written. Choose another name or folder. ({ $detail })

# How each part of the board is counted, and by whose method.
fleet-why-causes = Callbacks at which the cause was confirmed, of all callbacks. A visit with more causes counts for each; its hours and cost are parted equally among them. In brackets the 95 % interval of the share.
    .source = Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212
fleet-why-waiting = From commissioning to the first callback; a system without one has waited until the last day on record. The curve is Kaplan and Meier’s, its 95 % band on the scale ln(-ln S).
    .source = Kaplan and Meier, J. Am. Stat. Assoc. 53 (1958); Greenwood (1926) after Kalbfleisch and Prentice (from memory)
fleet-why-differences = Each group is held against all others of its kind for every cause, over the same days from commissioning. Told is what at least 10 systems on either side show, with 5 that have the cause, where the exact test stands after the correction for all comparisons (at most 0.05) and the whole 95 % interval of the ratio lies above 1.2.
    .source = Fisher, J. R. Stat. Soc. 98 (1935); Benjamini and Yekutieli, Ann. Stat. 29 (2001); Katz et al., Biometrics 34 (1978)
fleet-why-repeats = The same cause confirmed again at the same system within the window, of all visits after which the window is over or in which it came back. In brackets the 95 % interval.
    .source = Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212
fleet-why-fixes = A fix held so many days when it was seen to hold then or later, or failed only later. One that nobody asked about is not counted as held. In brackets the 95 % interval.
    .source = Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212
fleet-why-practice = Systems commissioned before that day and after it, each over the same days from commissioning: those that had a callback, of all. The difference is tested exactly.
    .source = Fisher, J. R. Stat. Soc. 98 (1935); Wilson, J. Am. Stat. Assoc. 22 (1927)
fleet-why-rates = Callbacks divided by the years in service of all systems of the group, with the exact 95 % interval. Callbacks of one system are taken as independent; where they are not, the interval is too narrow.
    .source = Garwood, Biometrika 28 (1936) 437-442
