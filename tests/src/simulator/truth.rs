//! One call as it really is: plant, habits, state, and what follows from them.

use super::fault::{Fault, fits, shape_habits, shape_plant, shape_state};
use super::plant::{Centre, Plant};
use super::pressure::{Wanted, properties, settle, tight};
use super::state::{Age, Dates, Habits, State, dates, fill_temperature};
use super::thermal::{Running, run};
use crate::invented::Dice;
use returnline_core::pressure::balance::Properties;

/// The truth of a call.
#[derive(Clone, Debug)]
pub struct Truth {
    /// The fault, or ordinary behaviour, by its name in the rule graph; empty
    /// where nothing happened at all.
    pub fault: &'static str,
    /// The system as built.
    pub plant: Plant,
    /// The system as the records have it: what was designed.
    pub designed: Plant,
    /// How it was commissioned.
    pub habits: Habits,
    /// Its condition.
    pub state: State,
    /// The same system as it would be without the fault.
    pub sound: Sound,
    /// When.
    pub dates: Dates,
    /// What it does, running.
    pub running: Running,
    /// What nobody measures about pipe and surround.
    pub properties: Properties,
    /// What 10 K of cooling would add to the gauge, psi.
    pub swing: f64,
}

/// What the fault has made worse, as it would be without it.
#[derive(Clone, Debug)]
pub struct Sound {
    plant: Plant,
    state: State,
}

impl Truth {
    /// Invents a call with a fault.
    #[must_use]
    pub fn new(fault: &Fault, dice: &mut Dice) -> Self {
        loop {
            if let Some(truth) = Self::try_new(fault, dice) {
                return truth;
            }
        }
    }

    fn try_new(fault: &Fault, dice: &mut Dice) -> Option<Self> {
        let designed = Plant::new(dice);
        if !fits(fault.id, &designed) {
            return None;
        }
        let whole = designed.clone();
        let mut plant = designed.clone();
        shape_plant(fault.id, &mut plant, dice);
        // A loop that is short is short in the records too, where they say it.
        let designed = if fault.id == "loop-too-short" || fault.id == "circulator-too-small" {
            plant.clone()
        } else {
            designed
        };
        let mut habits = Habits::usual(dice);
        shape_habits(fault.id, &mut habits, dice);
        let age = if fault.id.is_empty() {
            Age::Any
        } else {
            fault.age
        };
        let dates = dates(&plant, age, dice);
        habits.charge_temperature = fill_temperature(dates.start, dice);
        let mut state = State::sound(&plant, habits.well, dice);
        let sound = Sound {
            plant: whole,
            state: state.clone(),
        };
        shape_state(fault.id, &plant, &mut state, dice);
        let running = run(&plant, &state);
        let properties = properties(&plant, dice);
        let mean = 0.5 * (running.entering + plant.ground_temperature);
        let mut truth = Self {
            fault: fault.id,
            plant,
            designed,
            habits,
            state,
            sound,
            dates,
            running,
            properties,
            swing: 0.0,
        };
        truth.charge(mean, dice)?;
        Some(truth)
    }

    /// The same system on the same day without its fault.
    #[must_use]
    pub fn without_fault(&self) -> Self {
        let Sound { plant, mut state } = self.sound.clone();
        let running = run(&plant, &state);
        state.pressure = if self.pressure_is_the_fault() {
            let (least, most) = Wanted::sound(&plant).today;
            0.5 * (least + most)
        } else {
            self.state.pressure
        };
        Self {
            fault: "",
            plant,
            state,
            running,
            ..self.clone()
        }
    }

    /// Whether the gauge stands where it does because of the fault.
    fn pressure_is_the_fault(&self) -> bool {
        self.state.loss > 0.0 || self.wanted() != Wanted::sound(&self.plant)
    }

    /// Mean temperature of the loop on the day of the visit, °C.
    #[must_use]
    pub fn loop_temperature(&self) -> f64 {
        0.5 * (self.running.entering + self.plant.ground_temperature)
    }

    /// How short of suction pressure the circulators are, 0 to 1.
    #[must_use]
    pub fn starved(&self) -> f64 {
        match self.plant.centre {
            Centre::Vented => ((-self.state.level - 3.0) / 8.0).clamp(0.0, 1.0) * 0.6,
            _ => ((9.0 - self.state.pressure) / 9.0).clamp(0.0, 1.0),
        }
    }

    /// Pressure of the tight loop so many days ago, psi.
    #[must_use]
    pub fn tight_before(&self, days: f64) -> Option<f64> {
        let age = (self.dates.age() - days).max(0.2);
        tight(
            &self.plant,
            &self.state,
            &self.habits,
            &self.properties,
            age,
            self.loop_temperature(),
        )
    }

    /// Charges the loop so that the fault, or its absence, leads to a pressure.
    fn charge(&mut self, celsius: f64, dice: &mut Dice) -> Option<()> {
        if self.plant.centre == Centre::Vented {
            return Some(());
        }
        let wanted = self.wanted();
        let days = self.dates.age();
        let today = settle(
            &self.plant,
            &self.state,
            &mut self.habits,
            &self.properties,
            days,
            celsius,
            &wanted,
            dice,
        )?;
        let colder = tight(
            &self.plant,
            &self.state,
            &self.habits,
            &self.properties,
            days,
            celsius - 10.0,
        );
        self.swing = colder.map_or(0.0, |colder| colder - today);
        self.state.pressure = today;
        if self.state.loss > 0.0 {
            // Two in three come when it is empty, one when it was just filled up.
            let topped_up = dice.chance(0.33);
            self.state.pressure = if topped_up {
                dice.between(22.0, 45.0)
            } else {
                dice.between(0.0, 14.0)
            };
        }
        if self.fault == "charged-cold-without-allowance" && self.habits.charge_temperature > 10.5 {
            return None;
        }
        Some(())
    }

    fn wanted(&self) -> Wanted {
        let tank = self.plant.centre == Centre::Tank;
        match self.fault {
            "charge-left-too-low" => Wanted {
                charge: (10.0, 36.0),
                today: (-4.0, 12.5),
                fallen: -90.0,
            },
            "pipe-never-relaxed" => Wanted {
                charge: (40.0, 60.0),
                today: (-4.0, 14.0),
                fallen: 20.0,
            },
            "charged-cold-without-allowance" => Wanted {
                charge: (38.0, 60.0),
                today: (-6.0, 12.5),
                fallen: 20.0,
            },
            "over-pressurised" if tank => Wanted {
                charge: (45.0, 75.0),
                today: (46.0, 95.0),
                fallen: -90.0,
            },
            "over-pressurised" => Wanted {
                charge: (66.0, 98.0),
                today: (77.0, 125.0),
                fallen: -90.0,
            },
            "ordinary-relaxation" => Wanted {
                charge: (45.0, 66.0),
                today: (20.0, 55.0),
                fallen: 7.0,
            },
            "seasonal-swing" => Wanted {
                charge: (45.0, 68.0),
                today: (17.0, 50.0),
                fallen: 12.0,
            },
            "expansion-tank-waterlogged" | "expansion-tank-pre-charge-wrong" => Wanted {
                charge: (16.0, 34.0),
                today: (-3.0, 62.0),
                fallen: -90.0,
            },
            _ => Wanted::sound(&self.plant),
        }
    }
}
