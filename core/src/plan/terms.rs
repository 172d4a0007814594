//! The closed vocabularies of work: stages, sides, sections, hazards.

use crate::fluids::FluidKind;
use crate::named::named;
use crate::units::Dimension;

named! {
    /// The stages of a visit's work, in the only order in which they are done.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum Stage {
        /// Power off and locked, people protected, rules looked up.
        MakeSafe = "make-safe",
        /// Looked at and measured with nothing opened.
        Inspect = "inspect",
        /// Parts valved off from each other.
        Isolate = "isolate",
        /// Pressure let off where something will be opened.
        Relieve = "relieve",
        /// Ports and parts opened, the cart connected.
        Open = "open",
        /// Parts changed or mended.
        Repair = "repair",
        /// Parts cleaned.
        Clean = "clean",
        /// Parts closed again.
        Refit = "refit",
        /// Solids and old fluid carried out.
        Flush = "flush",
        /// Air carried out.
        Purge = "purge",
        /// The air left is measured; a gate.
        DeadHead = "dead-head",
        /// Antifreeze, water or inhibitor put in.
        Dose = "dose",
        /// The charge mixed.
        Mix = "mix",
        /// The mixture measured in two samples; a gate.
        Sample = "sample",
        /// The pipe stretched, the pressure or level set.
        Charge = "charge",
        /// The pressure watched; a gate.
        Hold = "hold",
        /// Cart off, ports capped, valves to run.
        Close = "close",
        /// Circulators bled, power back, started.
        Restart = "restart",
        /// Set with the circulators running.
        Adjust = "adjust",
        /// Readings that show that it worked.
        Prove = "prove",
        /// Told, recorded, handed over.
        HandOver = "hand-over",
    }
}

impl Stage {
    /// Whether its steps make the later ones safe: power off, parts valved off,
    /// pressure let off; parts and ports closed before pressure and power return.
    pub fn makes_safe(self) -> bool {
        matches!(
            self,
            Self::MakeSafe | Self::Isolate | Self::Relieve | Self::Refit | Self::Close
        )
    }

    /// Whether its steps are what corrects, not what leads there and back.
    pub fn corrects(self) -> bool {
        matches!(
            self,
            Self::Repair
                | Self::Clean
                | Self::Flush
                | Self::Purge
                | Self::Dose
                | Self::Mix
                | Self::Charge
                | Self::Adjust
        )
    }
}

named! {
    /// Which side of the isolation valves a step works on. Within a stage the
    /// loop comes before the unit, so that what is washed out of the ground
    /// never passes through the heat pump.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum Side {
        /// Nothing in particular, or before both.
        Any = "any",
        /// The pipe in the ground and its headers.
        Loop = "loop",
        /// Everything indoors: circulators, strainer, exchanger.
        Unit = "unit",
        /// Both together.
        Whole = "whole",
    }
}

named! {
    /// Parts of the system whose pressure is followed through the work.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum Section {
        /// The loop up to its valves.
        Loop = "loop",
        /// The indoor part between the loop's valves and the heat pump's.
        Unit = "unit",
        /// The exchanger between the heat pump's own valves.
        Exchanger = "exchanger",
        /// Flush ports and hoses, outside the valves.
        Ports = "ports",
    }
}

named! {
    /// Ways in which a step can hurt someone.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum Hazard {
        /// Fluid or gas under pressure.
        Pressure = "pressure",
        /// Electricity.
        Electric = "electric",
        /// Vapour that burns.
        Flammable = "flammable",
        /// Poison by mouth, skin or breath.
        Toxic = "toxic",
        /// Acid, lye or biocide on skin or in eyes.
        Corrosive = "corrosive",
        /// The refrigerant circuit.
        Refrigerant = "refrigerant",
        /// Heavy loads.
        Lifting = "lifting",
        /// Vaults, pits and trenches.
        Confined = "confined",
        /// The drinking-water supply.
        Potable = "potable",
        /// Wet floor, hoses underfoot.
        Slip = "slip",
        /// Hot or freezing surfaces and fluid.
        Hot = "hot",
        /// Fluid that must not reach ground or drain.
        Spill = "spill",
    }
}

impl Hazard {
    /// Whether this hazard can be there at all with a fluid that is known for certain.
    pub fn possible_with(self, fluid: FluidKind) -> bool {
        match self {
            Self::Flammable => fluid.is_flammable(),
            // Propylene glycol is generally recognised as safe (21 CFR
            // 582.1666); its inhibitors are not food, so it stays a spill.
            Self::Toxic => !matches!(fluid, FluidKind::Water | FluidKind::PropyleneGlycol),
            _ => true,
        }
    }
}

named! {
    /// What a gate looks at where no reading point exists.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum Observation {
        /// How long no bubble has been seen at the return hose.
        BubbleFreeTime = "bubble-free-time",
        /// How long the return has been clear and a fresh bag has stayed clean.
        ClearReturnTime = "clear-return-time",
        /// Difference of the freeze points of two samples.
        SampleDifference = "sample-difference",
        /// Fall of the gauge over the hold, beyond none.
        PressureFall = "pressure-fall",
        /// Largest difference of two circuits' return temperatures.
        ReturnSpread = "return-spread",
        /// Disagreement of the instrument with the second one.
        InstrumentDisagreement = "instrument-disagreement",
        /// Error of the thermometer in ice water.
        ThermometerError = "thermometer-error",
        /// Disagreement of the flow meter with the flow worked out from the exchanger's
        /// drop, as a share of it.
        FlowDisagreement = "flow-disagreement",
        /// Error of the freeze point that is read of distilled water.
        WaterFreezePointError = "water-freeze-point-error",
        /// Error of the specific gravity that is read of distilled water.
        WaterGravityError = "water-gravity-error",
        /// Disagreement of the power meter with the second one, as a share of it.
        PowerDisagreement = "power-disagreement",
        /// Error of the pH that is read of a buffer solution.
        BufferError = "buffer-error",
        /// How long the drop across the exchanger has been steady under the cleaner.
        SteadyDropTime = "steady-drop-time",
    }
}

named! {
    /// What a timer runs for.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum TimerKind {
        /// Flushing.
        Flush = "flush",
        /// Purging.
        Purge = "purge",
        /// Mixing.
        Mix = "mix",
        /// Between two samples.
        Sample = "sample",
        /// Pipe held stretched.
        Stretch = "stretch",
        /// Hold test.
        Hold = "hold",
        /// Cleaning solution circulating.
        Clean = "clean",
        /// Running until steady.
        Settle = "settle",
    }
}

named! {
    /// How a value is judged by a gate or a proof.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum Rule {
        /// Passes up to the value.
        AtMost = "at-most",
        /// Passes from the value up.
        AtLeast = "at-least",
    }
}

named! {
    /// When a proof reading is taken.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum ProofTime {
        /// Before leaving.
        Now = "now",
        /// After one day, a week and a month, held to the same each time.
        Rechecks = "rechecks",
        /// After a day.
        AfterDay = "after-day",
        /// After a week.
        AfterWeek = "after-week",
        /// After a month.
        AfterMonth = "after-month",
    }
}

named! {
    /// Kinds of flow centre, where a step is only for some.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    pub enum FlowCentreKind {
        /// Closed, no tank.
        Sealed = "sealed",
        /// Closed, with an expansion tank.
        SealedWithTank = "sealed-with-tank",
        /// Vented reservoir.
        NonPressurised = "non-pressurised",
    }
}

impl Observation {
    /// What its value measures.
    pub fn dimension(self) -> Dimension {
        match self {
            Self::BubbleFreeTime | Self::ClearReturnTime | Self::SteadyDropTime => {
                Dimension::Duration
            }
            Self::SampleDifference
            | Self::ReturnSpread
            | Self::ThermometerError
            | Self::WaterFreezePointError => Dimension::TemperatureDifference,
            Self::FlowDisagreement | Self::PowerDisagreement => Dimension::Fraction,
            Self::WaterGravityError | Self::BufferError => Dimension::Number,
            Self::PressureFall | Self::InstrumentDisagreement => Dimension::Pressure,
        }
    }
}
