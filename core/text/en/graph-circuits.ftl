# Texts of the rule graph: circuits of the ground loop: closed, kinked, air-locked, uneven


## Causes

cause-circuit-valved-off = One circuit valved off
    .homeowner = One of your ground circuits was left shut.
context-circuit-valved-off--first-month = It was left shut after flushing.
context-circuit-valved-off--circuits-flushed-singly = Flushing one by one means shutting and opening each.
context-circuit-valved-off--after-work = A circuit that was shut for the work stays shut.
cause-circuit-kinked = One circuit kinked or crushed
    .homeowner = One of your ground pipes is pinched.
context-circuit-kinked--horizontal-loop = Trench pipe is kinked in corners and crushed by backfill.
context-circuit-kinked--first-year = It happens while the pipe is laid.
context-circuit-kinked--since-start-up = A pipe is pinched when it is laid.
context-circuit-kinked--older-than-five-years = A kink from burying shows from the first season on.
cause-circuit-air-locked = One circuit air-locked
    .homeowner = Air blocks one of your ground circuits.
context-circuit-air-locked--cart-too-small = A cart that cannot fill every circuit at speed leaves one full of air.
context-circuit-air-locked--flush-too-slow = Too slow a flush leaves air standing in a down-leg.
context-circuit-air-locked--circuits-flushed-singly = Flushed by itself, a circuit cannot hide behind the others.
context-circuit-air-locked--dead-head-passed-at-start-up = An air-locked circuit would have failed the dead-head test.
context-circuit-air-locked--since-start-up = Such air stands there from the filling on.
context-circuit-air-locked--older-than-five-years = A pocket from filling shows from the first season on.
cause-circuits-unbalanced = Circuits unbalanced
    .homeowner = The fluid is not shared evenly between your ground circuits.
context-circuits-unbalanced--first-year = A layout is so from the start.
context-circuits-unbalanced--since-start-up = A layout is so from the start.
context-circuits-unbalanced--cooling-season = Uneven circuits are felt at the heating peak first.

## Mechanisms

mechanism-idle-circuit = One or more circuits get too little flow
    .homeowner = Part of your ground pipe does little work.

## Findings

finding-circuit-returns-differ = Return temperatures of the circuits differ
    .homeowner = The ground circuits come back at different temperatures.
finding-circuit-valve-found-shut = Circuit valve at the manifold found shut
    .homeowner = A valve of one circuit was shut.
finding-circuit-slow-both-ways = One circuit as slow in the other direction, and after purging
    .homeowner = One circuit is slow whichever way it is flushed.
finding-circuit-wakes-when-purged = Dead circuit gives air and comes alive when purged alone
    .homeowner = One circuit came back to life after it was flushed by itself.
finding-computed-circuits-uneven = Computed flows of the circuits are uneven
    .homeowner = By calculation the circuits share the flow unevenly.
finding-circuit-flow-low = Flow of one circuit is low by its meter or balancing valve
    .homeowner = One ground circuit gets too little flow.
finding-circuit-return-stands = The return of one circuit stands at another temperature altogether
    .homeowner = No fluid runs in one of your ground circuits.

## Links

link-circuit-valved-off--idle-circuit = No flow passes a shut valve.
link-circuit-valved-off--circuit-valve-found-shut = The handle shows it.
link-circuit-valved-off--restriction = Fewer circuits in parallel resist more.
link-circuit-valved-off--circuit-return-stands = Nothing runs behind a shut valve, and the pipe takes the temperature of its surroundings.
link-circuit-kinked--idle-circuit = A pinch takes the head that the others do not need.
link-circuit-kinked--circuit-slow-both-ways = A pinch is the same in both directions and does not purge away.
link-circuit-kinked--restriction = The others carry its share at a higher loss.
link-circuit-kinked--circuit-return-stands = Next to nothing runs through a kink.
link-circuit-air-locked--idle-circuit = The air column in the down-leg takes the head of that circuit.
link-circuit-air-locked--circuit-wakes-when-purged = Alone on the cart it gets enough flow to push the air out.
link-circuit-air-locked--air-in-fluid = Some of that air breaks loose and goes round.
link-circuit-air-locked--dead-head-air = A column of air shrinks under pressure like any other.
link-circuit-air-locked--circuit-return-stands = A locked circuit stands still.
link-circuits-unbalanced--idle-circuit = The longer circuit gets less.
link-circuits-unbalanced--computed-circuits-uneven = The network calculation shows it.
link-circuits-unbalanced--circuit-return-stands = An uneven circuit runs slowly; it seldom stands.
link-idle-circuit--circuit-returns-differ = A slow circuit comes back nearer to ground temperature than its neighbours.
link-idle-circuit--ground-side-weak = Less pipe does the work.
link-idle-circuit--circuit-flow-low = Measured by itself, it gets less than its share.
link-idle-circuit--ewt-drifts-through-season = With a part of the pipe out of use the rest is drawn down as a short loop is.
link-idle-circuit--ewt-recovers-after-rest = Rest lets the overdrawn part of the field catch up.
link-idle-circuit--head-unaccounted = The circuits beside it carry its flow and take more than the record makes expect.

## Checks

check-compare-circuit-returns = Compare the returns of the circuits
    .how = Unit running for a quarter of an hour. Clamp the same thermometer on each return at the manifold, one after the other, and repeat the first.
check-flush-circuit-both-ways = Flush the slow circuit alone
    .how = Pumps and unit valved off, filter clean. Put the cart on the slow circuit alone, read flow and pressure, watch for air; only then, with the filter clear and no check valve in the way, try the other direction.
check-compute-circuit-flows = Compute the flow of each circuit
    .how = From lengths and sizes the program computes how circuits share the flow.
check-measure-circuit-flows = Measure the flow of each circuit
    .how = Read the circuit meters or balancing valves at the manifold, or clamp a meter on each circuit in turn.
