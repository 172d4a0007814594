//! Every field, once.

use super::place::{
    CIRCUIT_COUNT, CIRCUIT_LENGTH, CIRCUIT_PIPE, FLOW_CENTRE, FLUID_KIND, FLUID_STRENGTH, PIPES,
    SITE_NAME, place,
};
use super::{Field, FieldKind as Kind};
use crate::named::named;
use crate::records::{Circulator, Exchanger, FlushCart, GroundLoop, HeatPump, System};
use crate::units::Dimension as D;

named! {
    /// Where a field belongs, in the order of a form; its label is `group-<id>`.
    #[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
    #[allow(missing_docs)] // the names are the meaning
    pub enum FieldGroup {
        Site = "site",
        Visit = "visit",
        Unit = "unit",
        FlowCentre = "flow-centre",
        Ground = "ground",
        Fluid = "fluid",
        Commissioning = "commissioning",
        Means = "means",
    }
}

fn unit(system: &mut System) -> &mut HeatPump {
    system.heat_pump.get_or_insert_with(HeatPump::default)
}
fn exchanger(system: &mut System) -> &mut Exchanger {
    unit(system)
        .exchanger
        .get_or_insert_with(Exchanger::default)
}
fn ground(system: &mut System) -> &mut GroundLoop {
    system.ground.get_or_insert_with(GroundLoop::default)
}
fn circulator(system: &mut System) -> &mut Circulator {
    if system.circulators.is_empty() {
        system.circulators.push(Circulator::default());
    }
    // Not empty: filled just above.
    &mut system.circulators[0]
}

const FLUIDS: &[&str] = &[
    "water",
    "propylene_glycol",
    "ethylene_glycol",
    "methanol",
    "ethanol",
];
const REFRIGERANTS: &[&str] = &["R-410A", "R-32", "R-454B", "R-407C", "R-134a", "R-22"];

macro_rules! fields {
    ($($group:ident { $($id:literal $($quick:ident)? : $kind:expr, $place:expr;)* })*) => {
        /// Every field, in the order of a form.
        pub const TABLE: &[Field] = &[$($(Field {
            id: $id, group: FieldGroup::$group, quick: fields!(@quick $($quick)?),
            kind: $kind, place: $place,
        },)*)*];
    };
    (@quick quick) => { true };
    (@quick) => { false };
}

fields! {
    Site {
        "site.name" quick: Kind::Text, SITE_NAME;
        "site.address": Kind::Text, place!(|f| f.site.address);
        "site.contact": Kind::Text, place!(|f| f.site.contact);
        "site.elevation": Kind::Measure(D::Length), place!(|f| f.site.elevation);
        "site.notes": Kind::Text, place!(|f| f.site.notes);
    }
    Visit {
        "visit.complaint" quick: Kind::Text, place!(|f| f.visit.complaint);
        "visit.date": Kind::Date, place!(|f| f.visit.date);
        "visit.technician": Kind::Text, place!(|f| f.visit.technician);
        "visit.outcome": Kind::Choice(&["fixed", "partly", "nothing_wrong", "handed_over", "open"]),
            place!(choice |f| f.visit.outcome);
        "visit.time_spent": Kind::Measure(D::Duration), place!(|f| f.visit.time_spent);
        "visit.cost": Kind::Measure(D::Number), place!(|f| f.visit.cost);
        "visit.notes": Kind::Text, place!(|f| f.visit.notes);
    }
    Unit {
        "unit.cooling_capacity" quick: Kind::Measure(D::Power),
            place!(|f| unit(&mut f.system).cooling_capacity);
        "unit.heating_capacity": Kind::Measure(D::Power),
            place!(|f| unit(&mut f.system).heating_capacity);
        "unit.rated_flow": Kind::Measure(D::VolumeFlow), place!(|f| unit(&mut f.system).rated_flow);
        "unit.minimum_flow": Kind::Measure(D::VolumeFlow),
            place!(|f| unit(&mut f.system).minimum_flow);
        "unit.heating_cop": Kind::Measure(D::Number), place!(|f| unit(&mut f.system).heating_cop);
        "unit.cooling_cop": Kind::Measure(D::Number), place!(|f| unit(&mut f.system).cooling_cop);
        "unit.refrigerant": Kind::Choice(REFRIGERANTS),
            place!(choice |f| unit(&mut f.system).refrigerant);
        "unit.freeze_guard": Kind::Measure(D::Temperature),
            place!(|f| unit(&mut f.system).freeze_guard);
        "unit.maximum_pressure": Kind::Measure(D::Pressure),
            place!(|f| unit(&mut f.system).maximum_pressure);
        "unit.exchanger_kind": Kind::Choice(&["coaxial", "brazed_plate"]),
            place!(choice |f| exchanger(&mut f.system).kind);
        "unit.label": Kind::Text, place!(|f| unit(&mut f.system).label);
    }
    FlowCentre {
        "flow_centre" quick: Kind::Choice(&["sealed", "sealed_with_tank", "non_pressurised"]),
            FLOW_CENTRE;
        "circulator.rated_power": Kind::Measure(D::Power),
            place!(|f| circulator(&mut f.system).rated_power);
        "circulator.speed": Kind::Measure(D::Fraction),
            place!(|f| circulator(&mut f.system).speed);
        "circulator.piping": Kind::Choice(&["series", "parallel"]),
            place!(choice |f| f.system.circulator_piping);
        "system.strainer": Kind::Flag, place!(|f| f.system.strainer);
        "system.check_valves": Kind::Flag, place!(|f| f.system.check_valves);
    }
    Ground {
        "ground.kind" quick: Kind::Choice(&["vertical", "horizontal", "pond"]),
            place!(choice |f| ground(&mut f.system).kind);
        "ground.circuits" quick: Kind::Count, CIRCUIT_COUNT;
        "ground.pipe" quick: Kind::Choice(PIPES), CIRCUIT_PIPE;
        "ground.length" quick: Kind::Measure(D::Length), CIRCUIT_LENGTH;
        "ground.header_return": Kind::Choice(&["direct", "reverse"]),
            place!(choice |f| ground(&mut f.system).header_return);
    }
    Fluid {
        "fluid.kind" quick: Kind::Choice(FLUIDS), FLUID_KIND;
        "fluid.strength": Kind::Measure(D::Fraction), FLUID_STRENGTH;
    }
    Commissioning {
        "system.installed_on" quick: Kind::Date, place!(|f| f.system.installed_on);
        "commissioning.date": Kind::Date, place!(|f| f.commissioning.date);
        "commissioning.charge_pressure" quick: Kind::Measure(D::Pressure),
            place!(|f| f.commissioning.charge_pressure);
        "commissioning.charge_date": Kind::Date, place!(|f| f.commissioning.charge_date);
        "commissioning.charge_temperature": Kind::Measure(D::Temperature),
            place!(|f| f.commissioning.charge_temperature);
        "commissioning.crew": Kind::Text, place!(|f| f.commissioning.crew);
        "commissioning.flush_recorded": Kind::Flag, place!(|f| f.commissioning.flush_recorded);
        "commissioning.flushed": Kind::Flag, place!(|f| f.commissioning.flushed);
        "commissioning.flush_flow": Kind::Measure(D::VolumeFlow),
            place!(|f| f.commissioning.flush_flow);
        "commissioning.flush_velocity": Kind::Measure(D::Velocity),
            place!(|f| f.commissioning.flush_velocity);
        "commissioning.flush_duration": Kind::Measure(D::Duration),
            place!(|f| f.commissioning.flush_duration);
        "commissioning.cart_power": Kind::Measure(D::Power),
            place!(|f| f.commissioning.cart_power);
        "commissioning.circuits_flushed_singly": Kind::Flag,
            place!(|f| f.commissioning.circuits_flushed_singly);
        "commissioning.heat_pump_isolated": Kind::Flag,
            place!(|f| f.commissioning.heat_pump_isolated);
        "commissioning.filtered": Kind::Flag, place!(|f| f.commissioning.filtered);
        "commissioning.filter_stages": Kind::Count, place!(|f| f.commissioning.filter_stages);
        "commissioning.circulators_bled": Kind::Flag, place!(|f| f.commissioning.circulators_bled);
        "commissioning.pipe_relaxed": Kind::Flag, place!(|f| f.commissioning.pipe_relaxed);
        "commissioning.water_source": Kind::Choice(&["well", "mains", "brought_in", "surface"]),
            place!(choice |f| f.commissioning.water_source);
        "commissioning.water_tested": Kind::Flag, place!(|f| f.commissioning.water_tested);
        "commissioning.antifreeze_volume": Kind::Measure(D::Volume),
            place!(|f| f.commissioning.antifreeze_volume);
        "commissioning.mix_duration": Kind::Measure(D::Duration),
            place!(|f| f.commissioning.mix_duration);
        "commissioning.concentration_checked": Kind::Flag,
            place!(|f| f.commissioning.concentration_checked);
    }
    Means {
        "means.reservoir_diameter": Kind::Measure(D::Length),
            place!(|f| cart(&mut f.visit.means).reservoir_diameter);
        "means.wanted_freeze_point": Kind::Measure(D::Temperature),
            place!(|f| f.visit.means.wanted_freeze_point);
        "means.refrigerant_certified": Kind::Flag,
            place!(|f| f.visit.means.refrigerant_certified);
        "means.electrical_licence": Kind::Flag, place!(|f| f.visit.means.electrical_licence);
    }
}

fn cart(means: &mut crate::records::Means) -> &mut FlushCart {
    means.cart.get_or_insert_with(FlushCart::default)
}
