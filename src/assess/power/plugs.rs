//! The plug between supply and board: told on both sides, and the same by what was seen.

use std::sync::Arc;

use super::Member;
use crate::assess::PartAnswers;
use crate::assess::reason::Reason;
use crate::record::{Given, Kind, PartFile, Side};
use crate::rules::Rules;
use crate::rules::connectors::Family;

/// Boards and supplies that tell no plug, and answers that should be of the same name and are not.
pub(super) fn of_machine(members: &[Member], rules: &Rules) -> Vec<Reason> {
    let fitted = || members.iter().filter(|member| member.is_fitted).map(|member| member.answers);
    let untold = fitted().filter(|part| is_untold(part, rules)).map(|part| Reason::PlugUntold { part: part.part });
    let apart = fitted().flat_map(|part| {
        rules.questions_for(part.file.part.kind).iter().filter_map(move |question| {
            let other_question = question.agrees_with.as_deref()?;
            let own = last_answer(&part.file, &question.name)?;
            let differs =
                |other: &&PartAnswers| last_answer(&other.file, other_question).is_some_and(|answer| answer != own);
            let other = fitted().find(differs)?;
            Some(Reason::AnswersApart { part: part.part, question: Arc::clone(question), other: other.part })
        })
    });
    untold.chain(apart).collect()
}

/// Whether a board or supply tells connectors, and none by which the one feeds the other.
fn is_untold(part: &PartAnswers, rules: &Rules) -> bool {
    let side = match part.file.part.kind {
        Kind::Mainboard => Side::Needs,
        Kind::PowerSupply => Side::Offers,
        _ => return false,
    };
    let is_plug = |name: &str| rules.connectors.get(name).is_some_and(|row| row.family == Family::BoardPower);
    part.design.as_deref().is_some_and(|design| {
        !design.connectors.is_empty()
            && !design.connectors.iter().any(|row| row.side == side && is_plug(&row.connector))
    })
}

fn last_answer<'a>(file: &'a PartFile, question: &str) -> Option<&'a str> {
    file.surveys_now().rev().find_map(|survey| match &survey.answer(question)?.given {
        Given::Is(answer) => Some(&**answer),
        Given::NotLooked | Given::CouldNotTell | Given::DoesNotApply => None,
    })
}
