//! From validated file entries to the typed library.

use super::file::{
    CriterionEntry, LimitEntry, OpeningEntry, ProcedureEntry, ProofEntry, StepEntry, TimerEntry,
};
use super::id::{CautionId, MaterialId, OpeningId, ProcedureId, SourceId, StepId, ToolId};
use super::library::{
    Caution, Criterion, Library, Looked, Only, Opening, Origin, Procedure, Proof, ProofLimit, Step,
    Timer,
};
use super::quantity::{QuantityKind, written};
use super::terms::{
    FlowCentreKind, Hazard, Observation, ProofTime, Rule, Section, Side, Stage, TimerKind,
};
use super::validate::Parsed;
use crate::figures::Figure;
use crate::records::{OperatingMode, ReadingPoint};
use crate::units::{Dimension, Duration, Quantity, Unit};

/// The library of files that passed validation; none if they did not.
pub(super) fn library(parsed: &Parsed) -> Option<Library> {
    Some(Library {
        sources: parsed
            .each(|file| &file.source)
            .map(|entry| SourceId::new(&entry.id))
            .collect(),
        cautions: parsed
            .each(|file| &file.caution)
            .map(|entry| {
                let id = CautionId::new(&entry.id);
                let hazards = all(&entry.hazards, Hazard::from_id)?;
                Some((id.clone(), Caution { id, hazards }))
            })
            .collect::<Option<_>>()?,
        openings: parsed
            .each(|file| &file.opening)
            .map(|entry| opening(entry).map(|opening| (opening.id.clone(), opening)))
            .collect::<Option<_>>()?,
        tools: parsed
            .each(|file| &file.tool)
            .map(|entry| ToolId::new(&entry.id))
            .collect(),
        materials: parsed
            .each(|file| &file.material)
            .map(|entry| {
                let amounts = all(&entry.amounts, QuantityKind::from_id)?;
                Some((MaterialId::new(&entry.id), amounts))
            })
            .collect::<Option<_>>()?,
        steps: parsed
            .each(|file| &file.step)
            .map(|entry| step(entry).map(|step| (step.id.clone(), step)))
            .collect::<Option<_>>()?,
        proofs: parsed
            .each(|file| &file.proof)
            .map(|entry| proof(entry).map(|proof| (proof.id.clone(), proof)))
            .collect::<Option<_>>()?,
        procedures: parsed
            .each(|file| &file.procedure)
            .map(|entry| (ProcedureId::new(&entry.id), procedure(entry)))
            .collect(),
    })
}

fn all<T>(texts: &[String], read: impl Fn(&str) -> Option<T>) -> Option<Vec<T>> {
    texts.iter().map(|text| read(text)).collect()
}

fn ids<T>(texts: &[String], new: fn(&str) -> T) -> Vec<T> {
    texts.iter().map(|text| new(text)).collect()
}

/// An optional text that must be readable where it is given.
fn given<T>(text: Option<&String>, read: impl Fn(&str) -> Option<T>) -> Option<Option<T>> {
    match text {
        None => Some(None),
        Some(text) => read(text).map(Some),
    }
}

fn opening(entry: &OpeningEntry) -> Option<Opening> {
    Some(Opening {
        id: OpeningId::new(&entry.id),
        section: given(entry.section.as_ref(), Section::from_id)?,
        connection: entry.connection,
    })
}

fn step(entry: &StepEntry) -> Option<Step> {
    Some(Step {
        id: StepId::new(&entry.id),
        stage: Stage::from_id(&entry.stage)?,
        side: given(entry.side.as_ref(), Side::from_id)?.unwrap_or(Side::Any),
        hazards: all(&entry.hazards, Hazard::from_id)?,
        cautions: ids(&entry.cautions, CautionId::new),
        acknowledge: entry.acknowledge,
        tools: ids(&entry.tools, ToolId::new),
        materials: ids(&entry.materials, MaterialId::new),
        needs: ids(&entry.needs, StepId::new),
        after: ids(&entry.after, StepId::new),
        supersedes: ids(&entry.supersedes, StepId::new),
        excludes: ids(&entry.excludes, StepId::new),
        only: only(&entry.only_flow_centres, entry.only_with_antifreeze)?,
        refills: entry.refills,
        running: entry.running,
        adds: entry.adds,
        draws_off: entry.draws_off,
        shuts: all(&entry.shuts, Section::from_id)?,
        joins: all(&entry.joins, Section::from_id)?,
        opens: ids(&entry.opens, OpeningId::new),
        closes: ids(&entry.closes, OpeningId::new),
        relieves: all(&entry.relieves, Section::from_id)?,
        pressurises: all(&entry.pressurises, Section::from_id)?,
        at_zero: all(&entry.at_zero, Section::from_id)?,
        timers: entry.timers.iter().map(timer).collect::<Option<_>>()?,
        quantities: all(&entry.quantities, QuantityKind::from_id)?,
        gate: entry.gate.iter().map(criterion).collect::<Option<_>>()?,
    })
}

fn only(flow_centres: &[String], with_antifreeze: bool) -> Option<Only> {
    Some(Only {
        flow_centres: all(flow_centres, FlowCentreKind::from_id)?,
        with_antifreeze,
    })
}

fn timer(entry: &TimerEntry) -> Option<Timer> {
    Some(Timer {
        kind: TimerKind::from_id(&entry.kind)?,
        least: Duration::from_si(Unit::Minute.to_si(entry.minutes)),
        quantity: given(entry.quantity.as_ref(), QuantityKind::from_id)?,
        origin: Origin::parse(&entry.source)?,
    })
}

/// What a criterion looks at, with what its value measures.
pub(super) fn looked(entry: &CriterionEntry) -> Option<(Looked, Dimension)> {
    match (&entry.reading, &entry.observe) {
        (Some(point), None) => {
            let point = ReadingPoint::from_id(point)?;
            Some((Looked::Reading(point), point.kind().dimension()))
        }
        (None, Some(observation)) => {
            let observation = Observation::from_id(observation)?;
            Some((Looked::Observation(observation), observation.dimension()))
        }
        _ => None,
    }
}

fn criterion(entry: &CriterionEntry) -> Option<Criterion> {
    let (looked, dimension) = looked(entry)?;
    Some(Criterion {
        looked,
        rule: Rule::from_id(&entry.rule)?,
        fallback: written(dimension, entry.value?, &entry.unit)?,
        origin: Origin::parse(&entry.source)?,
        quantity: given(entry.quantity.as_ref(), QuantityKind::from_id)?,
        return_to: ids(&entry.return_to, StepId::new),
    })
}

/// The mode of operation written like this.
pub(super) fn mode(text: &str) -> Option<OperatingMode> {
    match text {
        "idle" => Some(OperatingMode::Idle),
        "pumps_only" => Some(OperatingMode::PumpsOnly),
        "heating" => Some(OperatingMode::Heating),
        "cooling" => Some(OperatingMode::Cooling),
        _ => None,
    }
}

fn limit(entry: &LimitEntry, dimension: Dimension) -> Option<ProofLimit> {
    let fallback: Option<(Figure, Origin)> = match entry.value {
        None => None,
        Some(value) => Some((
            written(dimension, value, &entry.unit)?,
            Origin::parse(&entry.source)?,
        )),
    };
    Some(ProofLimit {
        quantity: given(entry.quantity.as_ref(), QuantityKind::from_id)?,
        fallback,
    })
}

fn proof(entry: &ProofEntry) -> Option<Proof> {
    let reading = ReadingPoint::from_id(&entry.reading)?;
    let end = |entry: &Option<LimitEntry>| match entry {
        None => Some(None),
        Some(entry) => limit(entry, reading.kind().dimension()).map(Some),
    };
    Some(Proof {
        id: entry.id.clone(),
        reading,
        mode: mode(&entry.mode)?,
        when: ProofTime::from_id(&entry.when)?,
        at_least: end(&entry.at_least)?,
        at_most: end(&entry.at_most)?,
        only: only(&entry.only_flow_centres, entry.only_with_antifreeze)?,
    })
}

fn procedure(entry: &ProcedureEntry) -> Procedure {
    Procedure {
        id: ProcedureId::new(&entry.id),
        steps: ids(&entry.steps, StepId::new),
        proofs: entry.proofs.clone(),
    }
}
