use super::*;
use crate::fluids::Fluid;
use crate::hydraulics::component::{FluidState, LossCurve};
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::network::ground_loop::*;
use crate::hydraulics::network::{Link, PumpState};
use crate::hydraulics::pipe::{Pipe, PipeSeries};
use crate::hydraulics::pump::PumpCurve;
use crate::units::{Fraction, Length, Number, Temperature};

fn water() -> FluidState {
    FluidState::of(Fluid::WATER, Temperature::from_celsius(10.0)).unwrap()
}
fn pipe(nominal: &str) -> Pipe {
    PipeSeries::IpsPolyethylene.pipe(nominal, 11.0).unwrap()
}
fn run(nominal: &str, metres: f64) -> Run {
    Run {
        pipe: pipe(nominal),
        length: Length::from_si(metres),
        fittings: Number::from_si(2.0),
    }
}
fn curve() -> PumpCurve {
    let points = [(0.0, 9.5), (7e-4, 7.5), (1.5e-3, 2.5)]
        .map(|(q, h)| (VolumeFlow::from_si(q), Length::from_si(h)));
    PumpCurve::through(&points).unwrap()
}
fn pump(state: PumpState) -> FlowPump {
    FlowPump {
        curve: curve(),
        state,
        check_valve: None,
    }
}
const FULL: PumpState = PumpState::Running(RATED);
const RATED: Number = Number::ONE;

fn field(lengths: &[f64], path: ReturnPath) -> LoopField {
    let headers = || lengths.iter().map(|_| run("1 1/4", 6.0)).collect();
    LoopField {
        circuits: lengths
            .iter()
            .map(|metres| Circuit {
                run: run("3/4", *metres),
                blocked: Fraction::from_si(0.0),
                open: true,
            })
            .collect(),
        supply: headers(),
        returns: headers(),
        path,
    }
}
fn plant(pumps: PumpSet) -> Plant {
    let exchanger = LossCurve::through(
        &[(VolumeFlow::from_si(7e-4), PressureDifference::from_si(2e4))],
        water(),
    );
    Plant {
        pumps,
        parts: vec![exchanger.unwrap()],
        pipes: vec![run("1", 10.0)],
        bypass: None,
    }
}
fn total(field: &LoopField, plant: &Plant) -> f64 {
    let ground = GroundLoop::build(field, plant, water(), FrictionLaw::default());
    let solution = ground.network.solve().unwrap();
    check_balance(&ground.network, &solution);
    solution.flow(ground.parts[0]).si()
}

/// Mass at every node and energy in every link.
fn check_balance(network: &Network, solution: &Solution) {
    let mut nodes = vec![0.0; network.nodes.len()];
    let largest = solution.flows.iter().fold(0f64, |a, q| a.max(q.abs()));
    for (link, flow) in network.links.iter().zip(&solution.flows) {
        nodes[link.from] -= flow;
        nodes[link.to] += flow;
        if link.open {
            let loss = link.link.law(network.fluid, network.law).loss(*flow).0;
            let drop = solution.pressures[link.from] - solution.pressures[link.to];
            assert!((loss - drop).abs() < 1e-4, "{loss} {drop}");
        }
    }
    for (node, sum) in nodes.iter().enumerate() {
        let sum = sum - network.nodes[node].outflow;
        assert!(sum.abs() <= 1e-9 * largest.max(1e-3), "node {node}: {sum}");
    }
}

#[test]
fn two_equal_circuits_share_alike_in_a_reverse_return() {
    let field = field(&[120.0, 120.0], ReturnPath::Reverse);
    let plant = plant(PumpSet::Series(vec![pump(FULL)]));
    let ground = GroundLoop::build(&field, &plant, water(), FrictionLaw::default());
    let solution = ground.network.solve().unwrap();
    let flows: Vec<f64> = ground
        .field
        .circuits
        .iter()
        .map(|c| solution.flow(*c).si())
        .collect();
    assert!((flows[0] / flows[1] - 1.0).abs() < 1e-9);
    check_balance(&ground.network, &solution);
}

#[test]
fn pumps_in_series_dead_and_turned_round_fall_in_order() {
    let field = field(&[100.0, 150.0, 120.0], ReturnPath::Direct);
    let flow = |states: &[PumpState]| {
        total(
            &field,
            &plant(PumpSet::Series(states.iter().map(|s| pump(*s)).collect())),
        )
    };
    let (two, one) = (flow(&[FULL, FULL]), flow(&[FULL]));
    let dead = flow(&[FULL, PumpState::Dead]);
    let opposed = flow(&[FULL, PumpState::TurnedRound(RATED)]);
    assert!(
        two > one && one > dead && dead > opposed.abs(),
        "{two} {one} {dead} {opposed}"
    );
    // Two alike against each other leave next to nothing.
    assert!(opposed.abs() < 0.02 * one, "{opposed}");
    let slow = flow(&[PumpState::Running(Number::from_si(0.5))]);
    assert!(slow < one && slow > 0.3 * one);
}

#[test]
fn a_check_valve_holds_the_idle_pump_beside_the_running_one() {
    let field = field(&[100.0, 100.0], ReturnPath::Direct);
    let check = LossCurve::of_loss_coefficient(Number::from_si(2.0), pipe("1"), water());
    let beside = |valve| {
        let idle = FlowPump {
            check_valve: valve,
            ..pump(PumpState::Dead)
        };
        total(&field, &plant(PumpSet::Parallel(vec![pump(FULL), idle])))
    };
    let alone = total(&field, &plant(PumpSet::Series(vec![pump(FULL)])));
    let (held, leaking) = (beside(Some(check)), beside(None));
    assert!((held / alone - 1.0).abs() < 1e-6, "{held} {alone}");
    assert!(leaking < 0.8 * alone);
}

#[test]
fn a_bypass_robs_the_field_and_a_blocked_circuit_starves() {
    let mut field = field(&[100.0, 100.0], ReturnPath::Direct);
    let mut plant = plant(PumpSet::Series(vec![pump(FULL)]));
    let flows = |field: &LoopField, plant: &Plant| {
        let ground = GroundLoop::build(field, plant, water(), FrictionLaw::default());
        let solution = ground.network.solve().unwrap();
        check_balance(&ground.network, &solution);
        (
            solution.flow(ground.field.circuits[0]).si(),
            solution.flow(ground.field.circuits[1]).si(),
        )
    };
    let sound = flows(&field, &plant);
    field.circuits[0].blocked = Fraction::from_si(0.97);
    let blocked = flows(&field, &plant);
    assert!(blocked.0 < 0.5 * sound.0 && blocked.1 > sound.1);
    field.circuits[0].blocked = Fraction::from_si(1.0);
    assert!(flows(&field, &plant).0 == 0.0);
    field.circuits[0].blocked = Fraction::from_si(0.0);
    plant.bypass = Some(Bypass {
        pipe: pipe("1"),
        opening: Fraction::from_si(0.3),
    });
    let robbed = flows(&field, &plant);
    assert!(robbed.0 + robbed.1 < 0.7 * (sound.0 + sound.1));
}

#[test]
fn extremes_are_solved_or_say_why_not() {
    // Forty circuits from stub to mile, three open; then none open.
    let lengths: Vec<f64> = (0..40).map(|i| 1.0 + 40.0 * f64::from(i)).collect();
    let mut field = field(&lengths, ReturnPath::Direct);
    let plant = plant(PumpSet::Series(vec![pump(FULL)]));
    assert!(total(&field, &plant) > 0.0);
    for circuit in &mut field.circuits[3..] {
        circuit.open = false;
    }
    assert!(total(&field, &plant) > 0.0);
    for circuit in &mut field.circuits {
        circuit.open = false;
    }
    assert!(total(&field, &plant).abs() < 1e-12);
    let empty = Network::new(water(), FrictionLaw::default());
    assert_eq!(empty.solve(), Err(SolveError::Empty));
    let mut cut = Network::new(water(), FrictionLaw::default());
    let (a, b) = (cut.node(), cut.node());
    cut.link(
        a,
        b,
        Link::Pipe {
            pipe: pipe("1"),
            length: Length::from_si(10.0),
            fittings: Number::from_si(0.0),
        },
    );
    cut.take(b, VolumeFlow::from_si(1e-4));
    assert_eq!(cut.solve(), Err(SolveError::Unreachable { node: a }));
}

/// The pattern is kept; what is added or shut after a solution still counts.
#[test]
fn a_solved_network_can_be_changed_and_solved_again() {
    let field = field(&[100.0, 150.0, 120.0], ReturnPath::Direct);
    let plant = plant(PumpSet::Series(vec![pump(FULL)]));
    let mut ground = GroundLoop::build(&field, &plant, water(), FrictionLaw::default());
    let before = ground.network.solve().unwrap();
    assert_eq!(ground.network.clone(), ground.network);
    ground.network.set_open(ground.field.circuits[1], false);
    let shut = ground.network.solve().unwrap();
    check_balance(&ground.network, &shut);
    assert!(shut.flow(ground.pumps[0]) < before.flow(ground.pumps[0]));
    let beside = run("3/4", 100.0);
    let link = Link::Pipe {
        pipe: beside.pipe,
        length: beside.length,
        fittings: beside.fittings,
    };
    let (from, to) = ground.network.ends(ground.field.circuits[0]).unwrap();
    ground.network.link(from, to, link);
    let added = ground.network.solve().unwrap();
    check_balance(&ground.network, &added);
    assert!(added.flow(ground.pumps[0]) > shut.flow(ground.pumps[0]));
    // From the flows of a smaller network nothing can be begun: it begins anew.
    assert_eq!(ground.network.solve_from(&shut).unwrap(), added);
}
