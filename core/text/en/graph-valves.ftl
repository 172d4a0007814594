# Texts of the rule graph: valves, flush ports and piping


## Causes

cause-three-way-valve-mis-set = Three-way valve or flush port left mis-set
    .homeowner = A valve used for flushing was not turned back fully, so part of the fluid takes a short cut.
context-three-way-valve-mis-set--first-month = Valves are left wrong after work on the loop.
context-three-way-valve-mis-set--complaint-recurs = After an earlier visit the flush port may have been left between positions.
context-three-way-valve-mis-set--older-than-five-years = A valve left wrong at start-up seldom stays unnoticed for years.
context-three-way-valve-mis-set--since-start-up = It is left so by whoever flushes.
context-three-way-valve-mis-set--after-work = Ports that were turned for work are not always turned back.
cause-isolation-valve-part-closed = Isolation valve part closed
    .homeowner = A shut-off valve is not fully open and holds the flow back.
context-isolation-valve-part-closed--first-month = Valves are left part closed after work.
context-isolation-valve-part-closed--complaint-recurs = After an earlier visit a valve may not have been opened again.
context-isolation-valve-part-closed--since-start-up = It is left so when the work is done.
context-isolation-valve-part-closed--came-on-suddenly = Somebody turns it, and from that day it is so.
context-isolation-valve-part-closed--after-work = A valve that was shut for the work is forgotten.
cause-supply-return-crossed = Supply and return crossed at the unit
    .homeowner = The two pipes to the heat pump were swapped.
context-supply-return-crossed--first-year = It is a mistake of installation.
context-supply-return-crossed--first-month = It is found at the first readings.
context-supply-return-crossed--since-start-up = Pipes are mostly crossed when they are first connected.
context-supply-return-crossed--after-work = Pipes that were taken off are put back the wrong way.

## Mechanisms

mechanism-restriction = Something holds the flow back
    .homeowner = Something narrows the path of the fluid.
mechanism-fluid-bypasses = Part of the fluid takes a short cut
    .homeowner = Part of the fluid takes a short cut and does no work.
mechanism-reversed-through-unit = Fluid runs through the exchanger the wrong way
    .homeowner = The fluid runs through the heat pump in the wrong direction.

## Findings

finding-valve-not-in-run-position = Three-way valve or flush port not in run position
    .homeowner = A valve was not in its working position.
finding-port-temperatures-disagree = Pipe temperatures either side of the flush port disagree
    .homeowner = Cold and warm fluid mix where they should not.
finding-isolation-valve-not-open = Isolation valve not fully open
    .homeowner = A shut-off valve was not fully open.
finding-drop-across-open-valve = Large pressure drop across a valve that looks open
    .homeowner = A valve that looks open holds the flow back.
finding-split-sign-reversed = Port marked "in" reads as the outlet should
    .homeowner = The two pipes have changed places.
finding-crossed-at-unit = Pipes traced from the wall arrive at the wrong ports
    .homeowner = The two pipes at the heat pump are swapped.

## Links

link-three-way-valve-mis-set--fluid-bypasses = Between positions all three ways are open, and fluid goes the shortest.
link-three-way-valve-mis-set--restriction = Between positions each way is narrowed.
link-three-way-valve-mis-set--valve-not-in-run-position = The handle or slot shows it.
link-three-way-valve-mis-set--head-unaccounted = A port half across takes head that nothing on record takes.
link-isolation-valve-part-closed--restriction = A half-closed ball or gate takes the head of the pump.
link-isolation-valve-part-closed--isolation-valve-not-open = The handle shows it.
link-isolation-valve-part-closed--drop-across-open-valve = The drop stands across the valve.
link-isolation-valve-part-closed--head-unaccounted = What the pump gives and pipe and exchanger do not take is lost in the valve.
link-supply-return-crossed--reversed-through-unit = The fluid enters where it should leave.
link-supply-return-crossed--crossed-at-unit = Tracing the pipes shows it.
link-reversed-through-unit--approach = Without counterflow the exchanger loses temperature difference.
link-reversed-through-unit--split-sign-reversed = In heating the port marked "in" is the colder one.
link-reversed-through-unit--capacity-short = The unit works at a poorer temperature.
link-fluid-bypasses--port-temperatures-disagree = Mixing shows as a step in pipe temperature at the port.
link-fluid-bypasses--temperature-split = What has not been to the ground comes back nearly as it left.
link-fluid-bypasses--ground-side-weak = Less fluid reaches the ground, so the unit sees colder water in heating.
link-fluid-bypasses--low-flow = Part of the flow passes the unit by.
link-restriction--low-flow = More resistance, less flow.
link-restriction--circulator-rise = Less flow pushes the pump up its curve towards shut-off.
link-restriction--circulator-power = A small wet-rotor pump takes less power at less flow.

## Checks

check-look-at-flush-ports = Look at three-way valves and flush ports
    .how = Check every slot and handle against the run position marked on the body. The slot, not the handle, tells the truth.
check-compare-port-temperatures = Pipe temperatures either side of the flush port
    .how = Unit running for ten minutes. Clamp the same thermometer before and after each three-way valve; a step means mixing.
check-look-at-valves = Look at every valve
    .how = Check each isolation valve and each circuit valve at the manifold. A gate valve: count the turns.
check-valve-drop = Pressure drop across a suspect valve
    .how = Same gauge before and after the valve, running. An open ball valve takes next to nothing.
check-trace-pipes = Trace supply and return to the unit
    .how = Follow both pipes from the wall to the ports. Running in heating, the fluid must enter warmer than it leaves.
