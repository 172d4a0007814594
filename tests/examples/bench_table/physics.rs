//! Fluid properties, networks, the purge plan and the seasonal band.

use crate::reference::{Answer, Reference};
use crate::timing::time;
use crate::{Row, Rows};
use returnline_core::fluids::{Fluid, FluidKind};
use returnline_core::hydraulics::friction::FrictionLaw;
use returnline_core::hydraulics::purge::{PurgeRules, plan};
use returnline_core::pressure::belief::Moment;
use returnline_core::uncertainty::Uncertain;
use returnline_core::units::{Duration, Fraction, Quantity, Temperature};
use returnline_tests::loops::{charge, field_of};
use returnline_tests::networks::read_network;
use serde_json::{Value, json};
use std::error::Error;

pub fn rows(reference: &Reference) -> Rows {
    let mut rows = Vec::new();
    for states in [1, 10, 100] {
        rows.push(properties(reference, states)?);
    }
    for circuits in [1, 10, 100] {
        rows.push(network(reference, circuits)?);
    }
    // No flow that can be solved clears a hundred circuits on one pair of headers.
    for circuits in [1, 10, 40] {
        rows.push(purge(reference, circuits)?);
    }
    for moments in [1, 10, 100] {
        rows.push(band(reference, moments)?);
    }
    Ok(rows)
}

/// Density, heat, conductivity and viscosity of a glycol solution.
fn properties(reference: &Reference, states: u32) -> Result<Row, Box<dyn Error>> {
    let fraction = 0.22;
    let fluid = Fluid::new(FluidKind::PropyleneGlycol, Fraction::from_si(fraction))?;
    let celsius: Vec<f64> = (0..states)
        .map(|at| -5.0 + 30.0 * f64::from(at) / f64::from(states))
        .collect();
    let temperatures: Vec<Temperature> = celsius
        .iter()
        .map(|&value| Temperature::from_celsius(value))
        .collect();
    let all = |t: Temperature| -> Result<f64, Box<dyn Error>> {
        Ok(fluid.density(t)?.si()
            + fluid.specific_heat(t)?.si()
            + fluid.conductivity(t)?.si()
            + fluid.viscosity(t)?.si())
    };
    for &t in &temperatures {
        all(t)?;
    }
    let question = json!({ "mass_fraction": fraction, "celsius": celsius });
    Ok(Row {
        what: "four fluid properties",
        work: format!("{states} states"),
        own: time(|| temperatures.iter().filter(|&&t| all(t).is_ok()).count()),
        beside: reference.time("CoolProp, AbstractState", "properties", &question)?,
    })
}

/// A pump, an exchanger and unequal circuits on direct headers, written link by
/// link as in `reference/tables/networks.json`. Node 0 is held.
fn written(circuits: usize) -> Value {
    let pipe = |from: usize, to: usize, bore: f64, length: f64, k: f64| {
        json!({ "kind": "pipe", "from": from, "to": to, "bore": bore, "length": length, "k": k,
                "state": "open" })
    };
    // As wide and as strong as so many circuits need.
    let share = circuits as f64 / 3.0;
    let wide = 34.5 * share.max(1.0).powf(0.4);
    let curve = json!([[0.0, 9.5], [0.7 * share, 7.4], [1.5 * share, 2.0]]);
    let mut links = vec![
        json!({ "kind": "pump", "from": 0, "to": 1, "curve": curve, "speed": 1.0 }),
        pipe(1, 2, wide, 4.0, 14.0),
    ];
    let (supply, back) = (3, 3 + circuits);
    for at in 0..circuits {
        let before = if at == 0 { 2 } else { supply + at - 1 };
        let after = if at == 0 { 0 } else { back + at - 1 };
        let length = 90.0 + 3.0 * (at * 17 % circuits) as f64;
        links.push(pipe(before, supply + at, wide, 3.0, 0.6));
        links.push(pipe(back + at, after, wide, 3.0, 0.6));
        links.push(pipe(supply + at, back + at, 21.8, length, 3.0));
    }
    json!({ "name": format!("{circuits} circuits"), "viscosity": 1.31e-6,
            "nodes": 3 + 2 * circuits, "links": links })
}

/// A network whose pattern is known solved anew from the start.
fn network(reference: &Reference, circuits: usize) -> Result<Row, Box<dyn Error>> {
    let spec = written(circuits);
    let read = read_network(spec.clone())?;
    read.network.solve()?;
    Ok(Row {
        what: "network solve",
        work: format!("{circuits} circuits"),
        own: time(|| read.network.solve().is_ok()),
        beside: reference.time("EPANET 2.2, ENinitH and ENrunH", "network", &spec)?,
    })
}

/// The purge plan. EPANET plans nothing: beside it stands one solution of a field
/// of so many circuits for each stage of the plan.
fn purge(reference: &Reference, circuits: u32) -> Result<Row, Box<dyn Error>> {
    let (field, cart, water) = field_of(circuits);
    let planned = || {
        plan(
            &field,
            &cart,
            PurgeRules::default(),
            water,
            FrictionLaw::default(),
        )
    };
    let stages = planned()?.stages.len();
    let once = reference.time(
        "EPANET 2.2, one solution a stage",
        "network",
        &written(circuits as usize),
    )?;
    let beside = once.map(|(library, answer)| match answer {
        Answer::Seconds(seconds) => (library, Answer::Seconds(seconds * stages as f64)),
        none @ Answer::None(_) => (library, none),
    });
    Ok(Row {
        what: "purge plan",
        work: format!("{circuits} circuits, {stages} stages"),
        own: time(|| planned().is_ok()),
        beside,
    })
}

/// The seasonal band of a sealed glycol loop.
fn band(reference: &Reference, moments: u32) -> Result<Row, Box<dyn Error>> {
    let (belief, _, _) = charge();
    let days: Vec<f64> = (0..moments).map(|at| 30.0 + 4.0 * f64::from(at)).collect();
    let asked: Vec<Moment> = days
        .iter()
        .map(|days| Moment {
            elapsed: Duration::from_si(86_400.0 * days),
            temperature: Uncertain::new(Temperature::from_celsius(14.0), 1.0),
        })
        .collect();
    for moment in &asked {
        belief.band(moment)?;
    }
    Ok(Row {
        what: "seasonal band",
        work: format!("{moments} moments"),
        own: time(|| asked.iter().filter(|&at| belief.band(at).is_ok()).count()),
        beside: reference.time(
            "numpy, Monte Carlo of 400 000",
            "band",
            &json!({ "days": days }),
        )?,
    })
}
