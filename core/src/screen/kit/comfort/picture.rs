//! Comfort drawn: every session a dot, how often there is discomfort, the ceiling with its range.
//! The band in which most people express comfortably is background, and no aim.

use super::super::plot::empty;
use super::setting::Setting;
use crate::answer::comfort::{Ceiling, Told};
use crate::answer::supply::Side;
use crate::quantity::Share;
use crate::screen::shapes::{Part, PlotBand, PlotCourse, PlotPicture, PlotPoint, RibbonPoint, Tick};
use crate::screen::View;

/// How far dots of one setting lie apart, and from the edge.
const APART: f32 = 0.03;
/// Dots beside each other; more lie on the last.
const MOST_BESIDE: usize = 12;

/// The picture of a side in a phase; none where nothing was said.
pub(super) fn of<Q: Setting>(
    view: &View<'_>,
    side: Side,
    told: &Told<Q>,
    background: Option<(Q, Q)>,
) -> Option<PlotPicture> {
    if told.dots.is_empty() {
        return None;
    }
    let words = view.words();
    let mut shown: Vec<Q> = told.dots.iter().map(|dot| dot.setting).collect();
    shown.extend(background.into_iter().flat_map(|(low, high)| [low, high]));
    let ladder = Q::ladder(view, &shown);
    let part = Some(match side {
        Side::Left => Part::Left,
        Side::Right => Part::Right,
    });
    let mut points: Vec<PlotPoint> = Vec::new();
    for dot in &told.dots {
        let height = ladder.at(dot.setting);
        let open = !dot.comfortable;
        let there = points.iter().filter(|point| point.open == open && point.middle == height).count();
        let off = APART * (1 + there.min(MOST_BESIDE)) as f32;
        let at = if dot.comfortable { off } else { 1.0 - off };
        points.push(PlotPoint { at, low: height, middle: height, high: height, part, open });
    }
    let rises = told.curve.iter().map(|(setting, chance)| {
        let at = ladder.at(*setting);
        RibbonPoint { at: fraction(*chance), low: at, middle: at, high: at }
    });
    let mut courses = vec![PlotCourse { points: rises.collect(), dashed: true }];
    if let Ceiling::At(found) = told.ceiling {
        let [low, middle, high] = [found.low, found.value, found.high].map(|setting| ladder.at(setting));
        let across = [0.0, 1.0].map(|at| RibbonPoint { at, low, middle, high });
        courses.push(PlotCourse { points: across.into(), dashed: false });
    }
    courses.retain(|course| course.points.len() > 1);
    let bands = background.map(|(low, high)| PlotBand {
        low: ladder.at(low),
        high: ladder.at(high),
        label: words.say("comfort-band"),
    });
    let hurt = told.dots.iter().filter(|dot| !dot.comfortable).count();
    Some(PlotPicture {
        bands: bands.into_iter().collect(),
        courses,
        points,
        ticks: vec![
            Tick { at: 0.0, label: words.say("comfort-was-comfortable") },
            Tick { at: 1.0, label: words.say("comfort-was-not") },
        ],
        scale: ladder.labels,
        legend: words.say("comfort-legend"),
        spoken: words
            .with("comfort-picture-spoken", &[("comfortable", (told.dots.len() - hurt).into()), ("hurt", hurt.into())]),
        ..empty()
    })
}

fn fraction(share: Share) -> f32 {
    (share.fraction() as f32).clamp(0.0, 1.0)
}
