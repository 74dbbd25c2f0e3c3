//! What to use first for an amount.

use super::page::{row, steps_back};
use crate::answer::keeping::{use_first, InForce, Kept};
use crate::gather::keeping::KeptMilk;
use crate::quantity::{say_decimal, Entered, Quantity, Volume, VolumeUnit};
use crate::screen::section::section;
use crate::screen::shapes::{Action, Event, FindingsScreen, Place, Screen, Section};
use crate::screen::View;
use crate::trouble::Trouble;

/// Amounts that are offered, in the unit that is read.
fn offered(unit: VolumeUnit) -> &'static [f64] {
    match unit {
        VolumeUnit::Milliliter => &[30.0, 60.0, 90.0, 120.0, 150.0, 180.0, 240.0],
        VolumeUnit::FluidOunce => &[1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0],
    }
}

pub(in crate::screen) fn show(view: &View<'_>, milliliters: u32) -> Result<Screen, Trouble> {
    let words = view.words();
    let unit = view.settings.volume;
    let options: Vec<(Volume, u32)> = offered(unit)
        .iter()
        .map(|amount| {
            let volume = Entered::<Volume>::of(*amount, unit).quantity();
            (volume, volume.canonical().round() as u32)
        })
        .collect();
    // The exact amount that its option stands for.
    let wished = options.iter().find(|(_, rounded)| *rounded == milliliters).map(|(volume, _)| *volume);
    let wished = wished.unwrap_or(Volume::from_canonical(f64::from(milliliters)));
    let place = Place::UseFirst { milliliters };
    let mut frame = view.frame(&place, words.say("kept-use-first"), words.say("kept-use-first-subtitle"))?;
    frame.back = Some(view.back());
    let milk = KeptMilk::read(view)?;
    let all: Vec<&Kept> = milk.kept.iter().collect();
    let chosen = use_first(&all, wished, view.now);
    let (headline, figure, caption) = match &chosen {
        None => (words.say("kept-nothing"), String::new(), String::new()),
        Some(found) => {
            let caption = match found.left_over {
                Some(over) if over.canonical() > 0.0 => {
                    words.with("use-first-over", &[("amount", words.volume(over).into())])
                }
                Some(_) => words.say("use-first-exact"),
                None => words.say("use-first-not-enough"),
            };
            (
                words.with("use-first-bottles", &[("bottles", found.ids.len().into())]),
                words.volume(found.together),
                caption,
            )
        }
    };
    // Nothing is said to be good: the unit's rules are not known.
    let steps_back_line = match &milk.in_force {
        InForce::StepsBack(why) => Some(words.say(steps_back(*why))),
        InForce::Rules(_) => None,
    };
    let chip = |(amount, rounded): (&f64, u32)| {
        let label = words.with_unit(say_decimal(*amount, 0), unit);
        let event = Event::Go { place: Place::UseFirst { milliliters: rounded } };
        Action::new(format!("wish-{rounded}"), label, event).chosen(rounded == milliliters)
    };
    let chips = offered(unit).iter().zip(options.iter().map(|(_, rounded)| *rounded)).map(chip).collect();
    let rows = chosen.iter().flat_map(|found| &found.ids).filter_map(|id| milk.kept.iter().find(|one| &one.id == id));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), figure.as_str(), caption.as_str()].join(" "),
            headline,
            figure,
            caption,
            dial: None,
            lines: steps_back_line.into_iter().chain([words.say("use-first-how")]).collect(),
            asks: Vec::new(),
            actions: Vec::new(),
            sections: vec![
                Section { actions: chips, ..section("wished", words.say("section-wished")) },
                Section {
                    rows: rows.map(|one| row(view, one)).collect(),
                    ..section("use-these", words.say("section-use-these"))
                },
            ],
        },
    })
}
