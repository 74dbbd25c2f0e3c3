//! What was found of each pump, in words.

use super::stated::key_of;
use super::words::{cycles_figures, found, name, vacuum_figures};
use crate::answer::choice::{lines, Aspect, CyclesAre, Found, Line, Reaches, Says};
use crate::answer::pump::Grade;
use crate::gather::choice::{ChoiceInputs, Offer};
use crate::record::offered::SettingsApart;
use crate::screen::shapes::ListRow;
use crate::screen::View;

/// Whether a line is told where nothing was wanted of it.
const fn is_told_anyway(aspect: Aspect) -> bool {
    matches!(aspect, Aspect::Grade | Aspect::Strength | Aspect::Cycles | Aspect::SetApart)
}

/// A row a pump; none where nothing was wanted of any.
pub(super) fn rows(view: &View<'_>, inputs: &ChoiceInputs, aspect: Aspect) -> Vec<ListRow> {
    let said: Vec<(&Offer, Line)> =
        inputs.offers.iter().filter_map(|offer| Some((offer, of(inputs, offer, aspect)?))).collect();
    let wanted = is_told_anyway(aspect) || said.iter().any(|(_, line)| line.found != Found::NothingWanted);
    said.into_iter()
        .filter(|_| wanted)
        .map(|(offer, line)| view.text_row(name(view, offer), render(view, inputs, offer, &line)))
        .collect()
}

/// The line of a pump about one thing.
pub(super) fn of(inputs: &ChoiceInputs, offer: &Offer, aspect: Aspect) -> Option<Line> {
    lines(&offer.pump, &inputs.wanted, &inputs.rules).into_iter().find(|line| line.aspect == aspect)
}

/// What was found, and what that rests on.
pub(super) fn render(view: &View<'_>, inputs: &ChoiceInputs, offer: &Offer, line: &Line) -> String {
    let said = says(view, inputs, offer, line.says);
    let found = found(view, line.found).filter(|_| !matches!(line.says, Says::AskFirst));
    match found {
        // One that is not stated says so itself.
        Some(found) if line.found != Found::NotStated => {
            view.words().with("offer-line", &[("found", found.into()), ("says", said.into())])
        }
        _ => said,
    }
}

fn says(view: &View<'_>, inputs: &ChoiceInputs, offer: &Offer, says: Says) -> String {
    let words = view.words();
    let figures = vacuum_figures(view, &offer.pump.vacuum).unwrap_or_default();
    let yes_no = |said: Option<bool>, yes: &str, no: &str| {
        words.say(match said {
            Some(true) => yes,
            Some(false) => no,
            None => "offer-not-stated",
        })
    };
    match says {
        Says::AskFirst => words.say("offer-ask-first"),
        Says::ByHand => words.say("offer-by-hand"),
        Says::NoClaim => words.say("offer-no-claim"),
        Says::HospitalForOne => words.say("offer-hospital-for-one"),
        Says::Claim(claim) => {
            let key = match claim.reaches {
                None => "offer-claim-hand",
                Some(Reaches::Yes) => "offer-claim-yes",
                Some(Reaches::Partly) => "offer-claim-partly",
                Some(Reaches::No) => "offer-claim-no",
                Some(Reaches::OpenAbove) => "offer-claim-open",
                Some(Reaches::NotStated) => "offer-claim-not-stated",
            };
            let grade = words.say(match claim.grade {
                Grade::Personal => "choice-grade-personal",
                Grade::Hospital => "choice-grade-hospital",
                Grade::Hand => "choice-grade-hand",
            });
            words.with(key, &[("grade", grade.into()), ("figures", figures.into())])
        }
        Says::Strength { strength, daily } => {
            let key = key_of(&strength);
            let said = words.with(key, &[("figures", figures.into())]);
            match daily && matches!(key, "offer-weak" | "offer-weak-in-part" | "offer-below") {
                true => [said, words.say("offer-weak-daily")].join(" "),
                false => said,
            }
        }
        Says::MostMilk(reaches) => {
            let key = match reaches {
                Reaches::Yes => "offer-most-yes",
                Reaches::Partly => "offer-most-partly",
                Reaches::No => "offer-most-no",
                Reaches::OpenAbove => "offer-open-above",
                Reaches::NotStated => "offer-no-vacuum",
            };
            let above = words.vacuum(inputs.rules.most_above);
            words.with(key, &[("figures", figures.into()), ("above", above.into())])
        }
        Says::Cycles(are) => {
            let key = match are {
                CyclesAre::AllOfThem => "offer-cycles-all",
                CyclesAre::SomeOfThem => "offer-cycles-some",
                CyclesAre::NoneOfThem => "offer-cycles-none",
                CyclesAre::OneEnd => "offer-cycles-one-end",
                CyclesAre::NotStated => "offer-not-stated",
            };
            let cycles = cycles_figures(view, &offer.pump.cycles).unwrap_or_default();
            words.with(key, &[("figures", cycles.into())])
        }
        Says::SetApart(how) => words.say(match how {
            Some(SettingsApart::Apart) => "choice-settings-apart-apart",
            Some(SettingsApart::Together) => "choice-settings-apart-together",
            Some(SettingsApart::VacuumOnly) => "choice-settings-apart-vacuum_only",
            Some(SettingsApart::Neither) => "choice-settings-apart-none",
            None => "offer-not-stated",
        }),
        Says::Stimulation(has) => yes_no(has, "offer-stimulation-yes", "offer-stimulation-no"),
        Says::BothAtOnce(has) => yes_no(has, "offer-both-yes", "offer-both-no"),
        Says::Runs { does, .. } => yes_no(does, "offer-runs-yes", "offer-runs-no"),
        Says::Motor { for_one, covers, warranty } => {
            let mut parts = vec![words.say(match for_one {
                Some(true) => "offer-motor-one",
                Some(false) => "offer-motor-several",
                None => "offer-motor-unknown",
            })];
            if offer.pump.had_before() {
                parts.push(words.say("offer-motor-used"));
            }
            if let Some(months) = warranty {
                parts.push(words.with(
                    match covers {
                        Some(true) => "offer-warranty-covers",
                        Some(false) => "offer-warranty-does-not",
                        None => "offer-warranty",
                    },
                    &[("months", months.get().into())],
                ));
            }
            parts.join(" ")
        }
        Says::NotShared => words.say("choice-offered-how-new"),
        Says::HowNotStated => words.say("offer-not-stated"),
        Says::SharedForOne => words.say("offer-shared-for-one"),
        Says::SharedOpen => words.say("offer-shared-open"),
        Says::SharedForSeveral => words.say("offer-shared-for-several"),
        Says::SharedUnknown => words.say("offer-shared-unknown"),
    }
}
